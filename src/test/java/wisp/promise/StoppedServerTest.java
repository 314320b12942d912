package wisp.promise;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.ConnectException;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** The server as a service manager runs it: it is told to stop (SIGTERM), and its log is read line by line. */
@Timeout(180)
class StoppedServerTest {
    /** How Java answers SIGTERM; the service's file names it. */
    private static final int STOPPED = 143;

    private static final Pattern UNDER_WAY = Pattern.compile("(?m)^wisp_http_under_way (\\d+)");

    @TempDir
    private Path folder;

    private Path data;
    private Path log;

    @BeforeEach
    void nameTheFolders() {
        data = folder.resolve("data");
        log = folder.resolve("log.jsonl");
    }

    @Test
    void aStopFinishesThePostThatHasBegunAndLetsFollowersGo() throws Exception {
        String event = Births.batch("stopped", 1);
        try (ServerProcess server = ServerProcess.logging(data, log);
                Socket phone = new Socket("127.0.0.1", server.port());
                Socket follower = new Socket("127.0.0.1", server.port())) {
            write(
                    phone,
                    head(
                                    server,
                                    "POST /api/v1/events",
                                    "Content-Type: application/x-ndjson\r\nContent-Length: " + event.length()
                                            + "\r\nConnection: close")
                            + event.substring(0, 50));
            while (underWay(server) < 2) {
                Thread.sleep(20);
            }
            write(follower, head(server, "GET /api/v1/events/live", "Accept: text/event-stream"));
            BufferedReader live = reader(follower);
            while (!live.readLine().contains("joined")) {
                // The head of the answer comes before it.
            }
            server.askToStop();
            awaitNoMoreTaken(server.port());
            while (live.readLine() != null) {
                // Up to the end of the stream, which the stop must bring though a post is still under way.
            }
            write(phone, event.substring(50));
            String answer = reader(phone).readLine();
            assertEquals("HTTP/1.1 201 Created", answer);
            assertEquals(STOPPED, server.exitCode());
        }
        assertTrue(Files.readString(Path.of("src/main/deploy/wisp.service")).contains("SuccessExitStatus=" + STOPPED));
        try (ServerProcess again = ServerProcess.start(data)) {
            assertEquals(1, again.get("/api/v1/events").body().lines().count());
        }
    }

    @Test
    void everyLineOfTheLogIsJsonAndNamesNoAnimal() throws Exception {
        try (ServerProcess server = ServerProcess.logging(data, log)) {
            assertEquals(201, server.post(Births.batch("secret", 3)).statusCode());
            assertEquals(200, server.get("/calves/calf-secret").statusCode());
            assertEquals(404, server.get("/nowhere/secret").statusCode());
            assertEquals(
                    422,
                    server.post("{\"specversion\":\"1.0\",\"id\":\"secret\"}").statusCode());
            assertEquals(200, server.get("/health/ready").statusCode());
            server.askToStop();
            assertEquals(STOPPED, server.exitCode());
        }
        List<String> messages = new ArrayList<>();
        List<String> routes = new ArrayList<>();
        for (String line : Files.readAllLines(log)) {
            JsonNode entry = new JsonMapper().readTree(line);
            assertTrue(entry.isObject(), line);
            assertTrue(entry.get("timestamp").isNumber(), line);
            assertTrue(
                    Pattern.matches("DEBUG|INFO|WARN|ERROR", entry.get("level").asText()), line);
            messages.add(entry.get("formattedMessage").asText());
            assertFalse(line.contains("secret"), line);
            entry.path("kvpList").forEach(pair -> routes.add(pair.path("route").asText()));
        }
        assertTrue(messages.containsAll(List.of("serving", "answered", "stopping", "stopped")), messages.toString());
        assertTrue(routes.containsAll(List.of("/api/v1/events", "none", "/health/ready")), routes.toString());
    }

    private static String head(ServerProcess server, String request, String fields) {
        return request + " HTTP/1.1\r\nHost: 127.0.0.1:" + server.port() + "\r\n" + fields + "\r\n\r\n";
    }

    private static void write(Socket to, String text) throws IOException {
        to.getOutputStream().write(text.getBytes(StandardCharsets.UTF_8));
        to.getOutputStream().flush();
    }

    private static BufferedReader reader(Socket from) throws IOException {
        return new BufferedReader(new InputStreamReader(from.getInputStream(), StandardCharsets.UTF_8));
    }

    /** Requests that are being answered, that which asks for it among them. */
    private static int underWay(ServerProcess server) throws IOException, InterruptedException {
        Matcher count = UNDER_WAY.matcher(server.get("/metrics").body());
        assertTrue(count.find());
        return Integer.parseInt(count.group(1));
    }

    private static void awaitNoMoreTaken(int port) throws IOException, InterruptedException {
        while (true) {
            try {
                new Socket("127.0.0.1", port).close();
                Thread.sleep(20);
            } catch (ConnectException closed) {
                return;
            }
        }
    }
}
