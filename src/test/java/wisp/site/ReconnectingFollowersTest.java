package wisp.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static wisp.site.Wire.birth;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/**
 * Eight phones write while readers follow the live events, go away at random and come back with Last-Event-ID: none
 * misses an event or sees one twice or out of order.
 */
@Timeout(180)
class ReconnectingFollowersTest {
    private static final int WRITERS = 8;
    private static final int BATCHES = 25;
    private static final int BATCH = 4;
    private static final int EVENTS = WRITERS * BATCHES * BATCH;

    @TempDir
    private Path folder;

    @Test
    void whoComesBackMissesNothingAndSeesNothingTwice() throws Exception {
        long seed = 20261125;
        System.out.println("seed of the followers that come and go: " + seed);
        ExecutorService pool = Executors.newCachedThreadPool();
        try (RunningSite site = RunningSite.over(folder)) {
            List<Future<Followed>> followers = IntStream.range(0, 5)
                    .mapToObj(i -> pool.submit(() -> follow(site, new Random(seed + i))))
                    .toList();
            List<? extends Future<?>> writers = IntStream.range(0, WRITERS)
                    .mapToObj(writer -> pool.submit(() -> write(site, writer)))
                    .toList();
            for (Future<?> writer : writers) {
                writer.get();
            }
            List<String> log = site.records().log().read(0, EVENTS + 1).stream()
                    .map(stored -> stored.sequence() + " " + stored.hash())
                    .toList();
            assertEquals(EVENTS, log.size());
            int connections = 0;
            for (Future<Followed> follower : followers) {
                assertEquals(log, follower.get().events());
                connections += follower.get().connections();
            }
            assertTrue(connections > 5 * 5, connections + " connections of 5 followers");
        } finally {
            pool.shutdownNow();
        }
    }

    private static void write(RunningSite site, int writer) {
        for (int batch = 0; batch < BATCHES; batch++) {
            StringBuilder lines = new StringBuilder();
            for (int i = 0; i < BATCH; i++) {
                String name = writer + "-" + batch + "-" + i;
                lines.append(birth(name, "calf-" + name)).append('\n');
            }
            assertEquals(
                    201,
                    site.post("/api/v1/events", "application/x-ndjson", lines.toString())
                            .statusCode());
        }
    }

    /** What a follower saw, and over how many connections. */
    private record Followed(List<String> events, int connections) {}

    private static Followed follow(RunningSite site, Random random) throws IOException {
        List<String> seen = new ArrayList<>();
        String last = "0";
        int connections = 0;
        while (seen.size() < EVENTS) {
            connections++;
            int enough = seen.size() + 1 + random.nextInt(60);
            HttpResponse<InputStream> answer = site.send(
                    site.request("/api/v1/events/live")
                            .header("Accept", "text/event-stream")
                            .header("Last-Event-ID", last),
                    BodyHandlers.ofInputStream());
            try (BufferedReader lines =
                    new BufferedReader(new InputStreamReader(answer.body(), StandardCharsets.UTF_8))) {
                String id = last;
                String line = lines.readLine();
                while (line != null && seen.size() < Math.min(enough, EVENTS)) {
                    if (line.startsWith("id: ")) {
                        id = line.substring(4);
                    } else if (line.startsWith("data: ")) {
                        seen.add(id + " "
                                + Json.read(line.substring(6)).get("hash").asText());
                        last = id;
                    }
                    line = seen.size() < Math.min(enough, EVENTS) ? lines.readLine() : null;
                }
            }
        }
        return new Followed(seen, connections);
    }
}
