package wisp.promise;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The disk below a running server fills, or refuses to take more: nothing more is acknowledged, what was acknowledged
 * is still served, and with space again it goes on. Where no file system can be mounted, a limit on the size of files
 * stands in for a full one.
 */
class FaultyDiskTest {
    @TempDir
    private Path folder;

    private Path data;
    private int sent;

    @BeforeEach
    void nameTheDataFolder() throws IOException {
        data = Files.createDirectory(folder.resolve("data"));
    }

    @Test
    void aFileSystemThatFillsTakesNothingMoreAndLosesNothing() throws Exception {
        boolean mountable = new ProcessBuilder("unshare", "-rm", "mount", "-t", "tmpfs", "tmpfs", data.toString())
                        .redirectErrorStream(true)
                        .start()
                        .waitFor()
                == 0;
        System.out.println("a small file system is " + (mountable ? "mounted" : "stood in for by ulimit"));
        if (!mountable) {
            aDiskThatRefusesWritesTakesNothingMoreAndLosesNothing();
            return;
        }
        List<String> small = List.of(
                "unshare",
                "-rm",
                "sh",
                "-c",
                "mount -t tmpfs -o size=2m tmpfs \"$0\" && head -c 1000000 /dev/zero > \"$0/filler\" && exec \"$@\"",
                data.toString());
        try (ServerProcess server = ServerProcess.launch(data, small).serving();
                Replay replay = new Replay()) {
            List<String> acknowledged = fill(server, "is full");
            check(server, replay, acknowledged);
            Files.delete(Path.of("/proc/" + server.pid() + "/root" + data).resolve("filler"));
            assertEquals(201, server.post(Births.batch("after", 3)).statusCode());
            acknowledged.add("after");
            check(server, replay, acknowledged);
        }
    }

    @Test
    void aDiskThatRefusesWritesTakesNothingMoreAndLosesNothing() throws Exception {
        List<String> limited = List.of("sh", "-c", "ulimit -f 3500; exec \"$@\"", "sh");
        List<String> acknowledged;
        try (Replay replay = new Replay()) {
            try (ServerProcess server = ServerProcess.launch(data, limited).serving()) {
                acknowledged = fill(server, "refuses reading or writing");
                check(server, replay, acknowledged);
                server.kill();
            }
            try (ServerProcess server = ServerProcess.start(data)) {
                check(server, replay, acknowledged);
                assertEquals(201, server.post(Births.batch("after", 3)).statusCode());
                acknowledged.add("after");
                check(server, replay, acknowledged);
            }
        }
        Command.done("verify", "--data", data);
    }

    /** Sends until the server refuses three times in a row, and gives the batches that it acknowledged. */
    private List<String> fill(ServerProcess server, String why) throws Exception {
        List<String> acknowledged = new ArrayList<>();
        int refused = 0;
        while (refused < 3) {
            String name = "b" + sent++;
            HttpResponse<String> answer = server.post(Births.batch(name, 40));
            if (answer.statusCode() == 201) {
                acknowledged.add(name);
                refused = 0;
            } else {
                assertEquals(503, answer.statusCode(), answer.body());
                assertTrue(answer.body().contains(why), answer.body());
                assertTrue(answer.body().contains("Nothing of this batch was kept."), answer.body());
                refused++;
            }
            assertTrue(sent < 2_000, "the disk never filled");
        }
        assertTrue(acknowledged.size() > 2, acknowledged.toString());
        return acknowledged;
    }

    private static void check(ServerProcess server, Replay replay, List<String> acknowledged) throws Exception {
        replay.follow(server);
        for (String name : acknowledged) {
            assertTrue(replay.sequences().containsKey(Births.id(name, 0)), "acknowledged and lost: " + name);
        }
        long batches = replay.sequences().keySet().stream()
                .map(id -> id.replaceAll("/.*", ""))
                .distinct()
                .count();
        assertEquals(acknowledged.size(), batches, "nothing that was refused is there");
    }
}
