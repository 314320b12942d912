package wisp.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static wisp.site.Wire.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.Socket;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SiteTest {
    @TempDir
    private static Path folder;

    private static RunningSite demo;

    @BeforeAll
    static void start() {
        demo = RunningSite.demo(folder);
    }

    @AfterAll
    static void stop() {
        demo.close();
    }

    @Test
    void itIsHealthy() {
        String body = "{'status':'ok','live':true,'ready':true,'sequence':15131}";
        assertEquals(json(body), demo.get("/health").body());
        assertEquals(json(body), demo.get("/api/v1/health").body());
    }

    @Test
    void everyRouteOfTheDescriptionAnswersAndNothingElseDoes() {
        JsonNode description = Json.read(demo.get("/api/v1/openapi.json").body());
        TreeSet<String> paths = new TreeSet<>();
        description.get("paths").fieldNames().forEachRemaining(paths::add);
        assertEquals(
                new TreeSet<>(List.of(
                        "/api/v1/calves",
                        "/api/v1/calves/{key}",
                        "/api/v1/due",
                        "/api/v1/due.ics",
                        "/api/v1/events",
                        "/api/v1/events/live",
                        "/api/v1/figures",
                        "/api/v1/figures/{id}",
                        "/api/v1/health",
                        "/api/v1/log/heads",
                        "/api/v1/pens",
                        "/api/v1/proof/{limit}",
                        "/api/v1/questions/{name}")),
                paths);
        for (String path : paths) {
            String there = path.replace("{key}", "2025-26-0001")
                    .replace("{id}", "stillbirth")
                    .replace("{limit}", "tagged-inside-limit")
                    .replace("{name}", "pens");
            int expected = path.endsWith("/live") ? 406 : 200;
            assertEquals(expected, demo.get(there).statusCode(), there);
            boolean posts = description.get("paths").get(path).has("post");
            assertEquals(posts ? 415 : 405, demo.post(there, "text/plain", "").statusCode(), there);
        }
    }

    @Test
    void everyFigureHasTheFieldsOfItsSchemaAndNoOthers() {
        JsonNode schema = Json.read(demo.get("/api/v1/openapi.json").body()).at("/components/schemas/Figure");
        for (JsonNode figure : Json.read(demo.get("/api/v1/figures").body()).get("figures")) {
            figure.fieldNames()
                    .forEachRemaining(
                            name -> assertTrue(schema.get("properties").has(name), name + " is not described"));
            schema.get("required")
                    .forEach(name -> assertTrue(figure.has(name.asText()), name + " is missing in " + figure));
        }
    }

    @Test
    void anApiErrorIsAProblemAndAPageErrorIsAPage() {
        HttpResponse<String> api = demo.get("/api/v1/nothing");
        assertEquals(404, api.statusCode());
        assertEquals(
                json("{'type':'about:blank','title':'There is no such thing','status':404,'detail':'There is nothing at"
                        + " /api/v1/nothing.'}"),
                api.body());
        HttpResponse<String> page = demo.get("/nothing");
        assertEquals(404, page.statusCode());
        assertTrue(page.body().contains("<p class=\"answer\">There is nothing at /nothing.</p>"), page.body());
        assertTrue(page.headers().firstValue("Content-Type").orElse("").startsWith("text/html"));
    }

    @Test
    void anUnknownCalfIsNotThereInTheApiAndOnThePages() {
        assertEquals(
                json(
                        "{'type':'about:blank','title':'There is no such thing','status':404,'detail':'No animal has the key"
                                + " nobody.'}"),
                demo.get("/api/v1/calves/nobody").body());
        HttpResponse<String> page = demo.get("/calves/nobody");
        assertEquals(404, page.statusCode());
        assertTrue(page.body().contains("No animal has the key nobody."));
    }

    @Test
    void whatIsAskedIsEscapedOnAnErrorPage() {
        String body = demo.get("/?season=%3Cscript%3Ealert(1)%3C/script%3E").body();
        assertFalse(body.contains("<script"), body);
        assertTrue(body.contains("&lt;script&gt;"), body);
    }

    @Test
    void headGivesNoBody() {
        for (String path : List.of("/", "/health", "/api/v1/figures", "/static/wisp.css")) {
            HttpResponse<String> answer = demo.send(demo.request(path).method("HEAD", BodyPublishers.noBody()));
            assertEquals(200, answer.statusCode(), path);
            assertEquals("", answer.body(), path);
        }
    }

    @Test
    void aMethodThatAnAddressDoesNotTakeIsRefused() {
        HttpResponse<String> answer = demo.send(demo.request("/api/v1/calves").DELETE());
        assertEquals(405, answer.statusCode());
        assertEquals(
                "application/problem+json",
                answer.headers().firstValue("Content-Type").orElse(""));
    }

    @Test
    void aForeignHostNameIsRefusedAndOwnOnesAreNot() throws IOException {
        assertTrue(asHost("evil.example").startsWith("HTTP/1.1 421"), asHost("evil.example"));
        assertTrue(asHost("evil.example:" + demo.port()).startsWith("HTTP/1.1 421"));
        assertTrue(asHost("127.0.0.1.evil.example").startsWith("HTTP/1.1 421"));
        for (String own : List.of("localhost", "localhost:" + demo.port(), "127.0.0.1", "[::1]:7373", "LOCALHOST")) {
            assertTrue(asHost(own).startsWith("HTTP/1.1 200"), own);
        }
    }

    @Test
    void aRefusedHostLearnsNothingOfTheRecords() throws IOException {
        String answer = asHost("evil.example");
        assertTrue(answer.contains("On this machine it is http://localhost:" + demo.port()), answer);
        assertFalse(answer.contains("15131"), answer);
        assertFalse(asHost("evil.example", "/calves/nobody").contains("tissue sample"));
        assertTrue(asHost("localhost", "/calves/nobody").contains("tissue sample"));
    }

    private static String asHost(String host) throws IOException {
        return asHost(host, "/health");
    }

    private static String asHost(String host, String path) throws IOException {
        try (Socket socket = new Socket("127.0.0.1", demo.port())) {
            OutputStream out = socket.getOutputStream();
            out.write(("GET " + path + " HTTP/1.1\r\nHost: " + host + "\r\nConnection: close\r\n\r\n")
                    .getBytes(StandardCharsets.US_ASCII));
            out.flush();
            InputStream in = socket.getInputStream();
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Test
    void pagesLetNothingForeignIn() {
        HttpResponse<String> page = demo.get("/");
        assertEquals(
                "default-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data:;"
                        + " form-action 'self'; frame-ancestors 'none'; base-uri 'none'",
                page.headers().firstValue("Content-Security-Policy").orElse(""));
        assertEquals(
                "nosniff", page.headers().firstValue("X-Content-Type-Options").orElse(""));
    }

    @Test
    void pensTellOfBirthsAndBedding() {
        JsonNode pens = Json.read(demo.get("/api/v1/pens").body());
        assertEquals("2025-26", pens.get("season").asText());
        int births = 0;
        for (JsonNode pen : pens.get("pens")) {
            births += pen.get("births").asInt();
        }
        // 246 calves, 7 of them without a pen on record
        assertEquals(239, births);
        JsonNode first = pens.get("pens").get(0);
        assertEquals(List.of("pen", "births", "last_bedded", "last_cleaned"), names(first));
    }

    @Test
    void aCalfTellsItsWholeLife() {
        JsonNode calf = Json.read(demo.get("/api/v1/calves/2025-26-0178").body());
        assertEquals("2025-26-0178", calf.get("calf").asText());
        assertEquals(1, calf.get("marks").asInt());
        assertEquals("before-birth", calf.get("marked").get(0).get("mark").asText());
        String last = "";
        for (JsonNode event : calf.get("events")) {
            String time = java.time.OffsetDateTime.parse(event.get("time").asText())
                    .toInstant()
                    .toString();
            assertTrue(last.compareTo(time) <= 0, last + " stands before " + time);
            last = time;
        }
    }

    private static List<String> names(JsonNode node) {
        List<String> names = new java.util.ArrayList<>();
        node.fieldNames().forEachRemaining(names::add);
        return names;
    }
}
