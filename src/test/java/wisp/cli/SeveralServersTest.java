package wisp.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.extension.ExtendWith;
import wisp.log.Verification;
import wisp.records.Records;
import wisp.site.Site;
import wisp.testing.OwnPostgres;
import wisp.testing.PostgresServer;

/** Three servers on one database, one of them a process of its own: what one is told, all of them show. */
@Timeout(240)
@ExtendWith(OwnPostgres.class)
class SeveralServersTest {
    private static final Pattern ADDRESS = Pattern.compile("at (http://[^ ]+/)");

    private final String database;
    private final HttpClient client = HttpClient.newHttpClient();
    private final List<String> servers = new ArrayList<>();
    private final List<Records> records = new ArrayList<>();
    private final List<Site> sites = new ArrayList<>();
    private Process process;

    SeveralServersTest(PostgresServer server) {
        this.database = server.newSchema();
    }

    @BeforeEach
    void start() throws IOException {
        process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xmx256m",
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Wisp.class.getName(),
                        "serve",
                        "--port",
                        "0",
                        "--data",
                        database)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        for (int i = 0; i < 2; i++) {
            Records own = Records.open(database, Clock.systemUTC());
            Site site = Site.start(own, "127.0.0.1", 0);
            records.add(own);
            sites.add(site);
            servers.add("http://127.0.0.1:" + site.port() + "/");
        }
        servers.add(addressOf(process));
    }

    private static String addressOf(Process server) throws IOException {
        BufferedReader out = server.inputReader(StandardCharsets.UTF_8);
        for (String said = out.readLine(); said != null; said = out.readLine()) {
            assertFalse(said.contains("user="), said);
            Matcher address = ADDRESS.matcher(said);
            if (address.find()) {
                return address.group(1);
            }
        }
        throw new IllegalStateException("the server ended before it served");
    }

    @AfterEach
    void stop() throws InterruptedException {
        process.destroyForcibly().waitFor();
        sites.forEach(Site::close);
        records.forEach(Records::close);
    }

    @Test
    void whatOneServerIsToldAllShow() throws Exception {
        List<Follower> followers = new ArrayList<>();
        for (String server : servers) {
            followers.add(new Follower(server, 0));
        }
        String figures = "";
        long slowest = 0;
        for (int event = 1; event <= 9; event++) {
            String told = servers.get(event % 3);
            post(told, "calf-" + event);
            long answered = System.nanoTime();
            for (Follower follower : followers) {
                assertEquals(event, follower.next());
            }
            slowest = Math.max(slowest, System.nanoTime() - answered);
            String now = get(told, "api/v1/figures?season=all");
            assertNotEquals(figures, now, "another birth changes the figures");
            for (String server : servers) {
                // each figure's link to its calves names the server that was asked
                assertEquals(now, get(server, "api/v1/figures?season=all").replace(server, told));
            }
            figures = now;
        }
        System.out.println("live events of one server reached the others within " + slowest / 1_000_000 + " ms");
        process.destroyForcibly().waitFor();
        post(servers.get(0), "calf-10");
        assertEquals(10, followers.get(1).next(), "the others go on when one is killed");
    }

    @Test
    void allServersRecordAtOnceAndAFollowerMayGoFromOneToAnother() throws Exception {
        int each = 15;
        List<CompletableFuture<Void>> phones = IntStream.range(0, 3)
                .mapToObj(phone -> CompletableFuture.runAsync(() -> {
                    for (int i = 0; i < each; i++) {
                        post(servers.get(phone), "own-" + phone + "-" + i);
                        post(servers.get(phone), "shared-" + i);
                    }
                }))
                .toList();
        int all = 4 * each;
        CompletableFuture<List<Long>> following = CompletableFuture.supplyAsync(() -> fromOneToAnother(all));
        // a phone that was refused leaves the follower waiting for ever
        phones.forEach(CompletableFuture::join);
        List<Long> seen = following.get(60, TimeUnit.SECONDS);
        assertEquals(IntStream.rangeClosed(1, all).mapToObj(Long::valueOf).toList(), seen);
        Verification found = records.get(0).log().verify();
        assertEquals(all + " ", found.events() + " " + found.problem());
    }

    private List<Long> fromOneToAnother(int all) {
        List<Long> seen = new ArrayList<>();
        try {
            while (seen.size() < all) {
                Follower follower = new Follower(servers.get(seen.size() % 3), seen.size());
                for (int i = 0; i < 7 && seen.size() < all; i++) {
                    seen.add(follower.next());
                }
                follower.leave();
            }
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        return seen;
    }

    private void post(String server, String calf) {
        String event =
                "{\"specversion\":\"1.0\",\"id\":\"" + calf + "\",\"source\":\"shed\",\"type\":\"birth\",\"subject\":\""
                        + calf + "\",\"time\":\"2026-03-01T08:00:00Z\",\"data\":{\"alive\":true}}";
        HttpResponse<String> answer = send(
                request(server + "api/v1/events")
                        .header("Content-Type", "application/cloudevents+json")
                        .POST(BodyPublishers.ofString(event)),
                BodyHandlers.ofString());
        assertEquals(201, answer.statusCode(), answer.body());
    }

    private String get(String server, String path) {
        HttpResponse<String> answer = send(request(server + path), BodyHandlers.ofString());
        assertEquals(200, answer.statusCode(), answer.body());
        return answer.body();
    }

    private static HttpRequest.Builder request(String address) {
        return HttpRequest.newBuilder(URI.create(address));
    }

    private <T> HttpResponse<T> send(HttpRequest.Builder request, HttpResponse.BodyHandler<T> handler) {
        try {
            return client.send(request.build(), handler);
        } catch (IOException broken) {
            throw new IllegalStateException(broken);
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(ended);
        }
    }

    /** A client of one server's live events. */
    private final class Follower {
        private final BufferedReader lines;

        Follower(String server, long after) {
            HttpResponse<InputStream> stream = send(
                    request(server + "api/v1/events/live")
                            .header("Accept", "text/event-stream")
                            .header("Last-Event-ID", Long.toString(after)),
                    BodyHandlers.ofInputStream());
            lines = new BufferedReader(new InputStreamReader(stream.body(), StandardCharsets.UTF_8));
        }

        /** The next event's sequence. */
        long next() throws IOException {
            while (true) {
                String line = lines.readLine();
                assertNotNull(line, "the stream ended");
                if (line.startsWith("id: ")) {
                    return Long.parseLong(line.substring(4));
                }
            }
        }

        void leave() throws IOException {
            lines.close();
        }
    }
}
