package wisp.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static wisp.site.Wire.birth;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import wisp.records.Records;

@Timeout(120)
class LiveFeedTest {
    @TempDir
    private Path folder;

    private RunningSite site;

    @BeforeEach
    void start() {
        site = RunningSite.over(folder);
        record("1", "2", "3");
    }

    @AfterEach
    void stop() {
        site.close();
    }

    @Test
    void aClientThatNamesNothingGetsWhatComesAfterItJoined() throws IOException {
        try (Follower follower = new Follower(site.request("/api/v1/events/live"))) {
            record("4");
            assertEquals(List.of("4 birth calf-4"), follower.next(1));
        }
    }

    @Test
    void aClientThatComesBackMissesNothingAndGetsNothingTwice() throws IOException {
        try (Follower follower =
                new Follower(site.request("/api/v1/events/live").header("Last-Event-ID", "1"))) {
            record("4");
            assertEquals(List.of("2 birth calf-2", "3 birth calf-3", "4 birth calf-4"), follower.next(3));
        }
    }

    @Test
    void theAddressMaySayAfterWhichEvent() throws IOException {
        try (Follower follower = new Follower(site.request("/api/v1/events/live?after=0"))) {
            assertEquals(List.of("1 birth calf-1", "2 birth calf-2", "3 birth calf-3"), follower.next(3));
        }
    }

    @Test
    void whatAnotherProgramRecordsInTheSameFolderComesToo() throws IOException {
        try (Follower follower = new Follower(site.request("/api/v1/events/live"));
                Records other = Records.open(folder.toString(), Clock.systemUTC())) {
            other.take(List.of(other.reader().read(birth("9", "calf-9"))), false);
            assertEquals(List.of("4 birth calf-9"), follower.next(1));
        }
    }

    @Test
    void moreThanAPageComesWholeAndInOrder() throws IOException {
        StringBuilder lines = new StringBuilder();
        for (int i = 4; i <= 1300; i++) {
            lines.append(birth("" + i, "calf-" + i)).append('\n');
        }
        site.post("/api/v1/events", "application/x-ndjson", lines.toString());
        try (Follower follower = new Follower(site.request("/api/v1/events/live?after=0"))) {
            List<String> all = follower.next(1300);
            assertEquals("1 birth calf-1", all.get(0));
            assertEquals("1300 birth calf-1300", all.get(1299));
            assertEquals(1300, all.stream().distinct().count());
        }
    }

    @Test
    void oneClientThatGoesAwayLeavesTheOthersFollowing() throws IOException {
        try (Follower follower = new Follower(site.request("/api/v1/events/live"))) {
            new Follower(site.request("/api/v1/events/live")).close();
            record("4");
            record("5");
            assertEquals(List.of("4 birth calf-4", "5 birth calf-5"), follower.next(2));
        }
    }

    @Test
    void whoDoesNotAskForAStreamIsTold() {
        HttpResponse<String> answer = site.get("/api/v1/events/live");
        assertEquals(406, answer.statusCode());
        assertEquals(
                "Send the header Accept: text/event-stream.",
                Json.read(answer.body()).get("detail").asText());
    }

    private void record(String... ids) {
        for (String id : ids) {
            assertEquals(
                    201,
                    site.post("/api/v1/events", "application/cloudevents+json", birth(id, "calf-" + id))
                            .statusCode());
        }
    }

    /** A client that has joined. */
    private final class Follower implements AutoCloseable {
        private final BufferedReader lines;

        Follower(HttpRequest.Builder request) throws IOException {
            HttpResponse<InputStream> answer =
                    site.send(request.header("Accept", "text/event-stream"), BodyHandlers.ofInputStream());
            assertEquals(
                    "text/event-stream",
                    answer.headers().firstValue("Content-Type").orElse("").split(";")[0]);
            lines = new BufferedReader(new InputStreamReader(answer.body(), StandardCharsets.UTF_8));
            assertEquals(": joined", lines.readLine());
        }

        /** The next events as id, kind and subject. */
        List<String> next(int many) throws IOException {
            List<String> events = new ArrayList<>();
            String id = "";
            String kind = "";
            while (events.size() < many) {
                String line = lines.readLine();
                assertNotNull(line, "the stream ended");
                if (line.startsWith("id: ")) {
                    id = line.substring(4);
                } else if (line.startsWith("event: ")) {
                    kind = line.substring(7);
                } else if (line.startsWith("data: ")) {
                    events.add(id + " " + kind + " "
                            + Json.read(line.substring(6)).get("subject").asText());
                }
            }
            return events;
        }

        @Override
        public void close() throws IOException {
            lines.close();
        }
    }
}
