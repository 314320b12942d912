package wisp.promise;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The drill: a season on a running server, a backup while phones write, the data folder destroyed, all of it back. */
class RestoreDrillTest {
    private static final List<String> ANSWERS = List.of(
            "/api/v1/figures?season=all",
            "/api/v1/figures?season=all&by=pen",
            "/api/v1/questions/season",
            "/api/v1/log/heads");

    @TempDir
    private Path folder;

    private Path data;

    @BeforeEach
    void aSeason() throws Exception {
        data = folder.resolve("data");
        Path season = folder.resolve("season.jsonl");
        Command.done("simulate", "--calves", 60, "--seed", 3, "--out", season);
        Files.createDirectories(data.resolve("analytics"));
        Files.writeString(data.resolve("analytics/targets.yaml"), "stillbirth: {below: 0.04}\n");
        Command.done("import", "--data", data, season);
    }

    @Test
    void whatIsRestoredGivesTheSameFigures() throws Exception {
        Path during = folder.resolve("during.zip");
        Path after = folder.resolve("after.zip");
        String headDuring;
        List<String> answers;
        try (ServerProcess server = ServerProcess.start(data)) {
            headDuring = backUpWhilePhonesWrite(server, during);
            Command.done("backup", "--data", data, after);
            answers = answers(server);
            server.kill();
        }
        destroy(data);

        Command.done("restore", "--data", data, after);
        try (ServerProcess server = ServerProcess.start(data)) {
            assertEquals(answers, answers(server));
        }
        Command.done("verify", "--data", data, "--head", Files.readString(folder.resolve("after.zip.head")));
        Command.done("verify", "--data", data, "--head", headDuring);

        Path other = folder.resolve("other");
        Command.done("restore", "--data", other, during);
        assertEquals(headDuring, Command.done("verify", "--data", other, "--head"));
        Path earlier = folder.resolve("earlier");
        Command.done("restore", "--data", earlier, after, "--as-of", headDuring.split(":")[0]);
        assertEquals(headDuring, Command.done("verify", "--data", earlier, "--head"));
        assertEquals(figures(other), figures(earlier));
        Command refused = Command.run("restore", "--data", data, after);
        assertEquals(1, refused.code());
        assertTrue(refused.said().contains("a backup is restored into an empty place only."), refused.said());
    }

    private static String figures(Path place) throws IOException, InterruptedException {
        return Command.done("figures", "--data", place, "--season", "all", "--format", "json");
    }

    /** Makes a backup while three phones write, and gives its head. */
    private String backUpWhilePhonesWrite(ServerProcess server, Path file) throws Exception {
        AtomicBoolean stop = new AtomicBoolean();
        ExecutorService pool = Executors.newFixedThreadPool(3);
        try {
            List<Future<Integer>> phones = IntStream.range(0, 3)
                    .mapToObj(phone -> pool.submit(() -> {
                        int sent = 0;
                        while (!stop.get()) {
                            String batch = Births.batch("p" + phone + "-" + sent++, 3);
                            assertEquals(201, server.post(batch).statusCode());
                        }
                        return sent;
                    }))
                    .toList();
            String said = Command.done("backup", "--data", data, file);
            stop.set(true);
            for (Future<Integer> phone : phones) {
                assertTrue(phone.get(1, TimeUnit.MINUTES) > 0, "phones wrote meanwhile");
            }
            Matcher head = Pattern.compile("Head (\\d+:[0-9a-f]{64}),").matcher(said);
            assertTrue(head.find(), said);
            assertEquals(
                    head.group(1), Files.readString(Path.of(file + ".head")).strip());
            return head.group(1);
        } finally {
            stop.set(true);
            pool.shutdown();
        }
    }

    private static List<String> answers(ServerProcess server) throws Exception {
        String[] answers = new String[ANSWERS.size()];
        for (int i = 0; i < answers.length; i++) {
            answers[i] = server.get(ANSWERS.get(i)).body();
            assertTrue(answers[i].length() > 100, answers[i]);
        }
        return List.of(answers);
    }

    private static void destroy(Path place) throws IOException {
        try (Stream<Path> all = Files.walk(place)) {
            for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(each);
            }
        }
    }
}
