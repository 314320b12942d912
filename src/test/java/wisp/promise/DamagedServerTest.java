package wisp.promise;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.json.JsonMapper;
import java.net.http.HttpResponse;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The database file is damaged under the program: no server serves it as truth, and verify names the place. */
class DamagedServerTest {
    /** So many that a connection's cache of 2 MB cannot hold them. */
    private static final int EVENTS = 8_000;

    private static final int READS_MOST = 50;

    @TempDir
    private Path folder;

    private Path data;
    private Path database;

    @BeforeEach
    void aLog() throws Exception {
        data = folder.resolve("data");
        database = data.resolve("wisp.db");
        String lines = IntStream.rangeClosed(1, EVENTS)
                .mapToObj(i -> "{\"specversion\":\"1.0\",\"source\":\"s\",\"id\":\"" + i
                        + "\",\"type\":\"noted\",\"subject\":\"calf-" + i % 50
                        + "\",\"time\":\"2026-03-01T08:00:00Z\",\"data\":{\"text\":\"seen " + i + " in the shed\"}}")
                .collect(Collectors.joining("\n"));
        Command.done("import", "--data", data, Files.writeString(folder.resolve("events.jsonl"), lines));
    }

    private void turnABitOfEvent(int number) throws Exception {
        byte[] bytes = Files.readAllBytes(database);
        int at = new String(bytes, StandardCharsets.ISO_8859_1).indexOf("seen " + number + " in the shed");
        try (FileChannel file = FileChannel.open(database, StandardOpenOption.WRITE)) {
            file.write(java.nio.ByteBuffer.wrap(new byte[] {(byte) (bytes[at] ^ 1)}), at);
        }
    }

    @Test
    void aServerDoesNotStartOnATurnedBit() throws Exception {
        turnABitOfEvent(4321);
        String fate = ServerProcess.launch(data).fate();
        assertTrue(fate.contains("Event 4321 of the log is not as it was written: "), fate);
        assertTrue(fate.endsWith("exit code 1"), fate);
        Command verify = Command.run("verify", "--data", data);
        assertEquals(1, verify.code());
        assertTrue(verify.said().startsWith("Broken at sequence 4321: "), verify.said());
    }

    @Test
    void aServerDoesNotStartOnAFileCutShort() throws Exception {
        try (FileChannel file = FileChannel.open(database, StandardOpenOption.WRITE)) {
            file.truncate(Files.size(database) / 2);
        }
        String fate = ServerProcess.launch(data).fate();
        assertTrue(fate.contains(database + " is damaged") || fate.contains(" is not as it was written: "), fate);
        assertTrue(fate.endsWith("exit code 1"), fate);
        Command verify = Command.run("verify", "--data", data);
        assertEquals(1, verify.code());
        assertTrue(verify.said().contains("damaged"), verify.said());
    }

    /** What is read from the file is checked; figures stand on what was read whole before and stay the truth. */
    @Test
    void aRunningServerNoticesWhenItReads() throws Exception {
        try (ServerProcess server = ServerProcess.start(data)) {
            String some = "/api/v1/events?after=90&limit=20";
            String all = "/api/v1/events?limit=10000";
            Map<String, String> written = new HashMap<>();
            for (String address : List.of(some, all)) {
                HttpResponse<String> answer = server.get(address);
                assertEquals(200, answer.statusCode());
                written.put(address, answer.body());
            }
            String known = server.get("/api/v1/figures?as-of=2026-12-31").body();
            turnABitOfEvent(100);
            for (String address : List.of(some, all)) {
                HttpResponse<String> answer = server.get(address);
                // a connection may have that page of the file in memory yet, as it was written
                for (int i = 0; i < READS_MOST && answer.statusCode() == 200; i++) {
                    assertEquals(written.get(address), answer.body());
                    server.get(all);
                    answer = server.get(address);
                }
                assertEquals(503, answer.statusCode(), address + ": " + answer.body());
                assertTrue(answer.body().contains("Event 100 of the log is not as it was written: "), answer.body());
            }
            assertEquals(known, server.get("/api/v1/figures?as-of=2026-12-31").body());
        }
    }

    @Test
    void aTornTailIsNoTruthAgainstTheHeadThatWasNoted() throws Exception {
        String noted;
        try (ServerProcess server = ServerProcess.start(data)) {
            for (int i = 0; i < 6; i++) {
                assertEquals(201, server.post(Births.batch("b" + i, 5)).statusCode());
            }
            var heads =
                    new JsonMapper().readTree(server.get("/api/v1/log/heads").body());
            noted = heads.get("sequence").asLong() + ":" + heads.get("hash").asText();
            server.kill();
        }
        try (FileChannel tail = FileChannel.open(data.resolve("wisp.db-wal"), StandardOpenOption.WRITE)) {
            tail.truncate(tail.size() - 100);
        }
        try (ServerProcess server = ServerProcess.start(data);
                Replay replay = new Replay()) {
            replay.follow(server);
            assertEquals(EVENTS + 25, replay.sequences().size(), "whole batches, and none that is torn");
        }
        Command verify = Command.run("verify", "--data", data, "--head", noted);
        assertEquals(1, verify.code());
        assertEquals(
                "The log ends at event 8025, and event 8030 was noted: what followed was cut off, or this is another"
                        + " log.",
                verify.said());
    }
}
