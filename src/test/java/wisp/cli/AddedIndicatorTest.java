package wisp.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wisp.records.Records;
import wisp.site.Site;

/** A vet adds a figure of her own: a file, no Java, no rebuild. */
class AddedIndicatorTest {
    private static final String OWN = """
            id: first-week-deaths
            version: 1
            title: Deaths in the first week
            measure: risk
            clock: hours
            window: {after: 24 h, to: 7 d}
            outcome: death
            target: {below: 0.02, source: Agreed at the herd visit.}
            source: The practice's own.
            """;

    @TempDir
    private Path data;

    private Path file;

    @BeforeEach
    void addFile() throws IOException {
        Path folder = Files.createDirectories(data.resolve("analytics").resolve("indicators"));
        file = Files.writeString(folder.resolve("first-week.yaml"), OWN);
    }

    @Test
    void itIsSeenOnTheCommandLineInTheApiAndOnThePages() throws Exception {
        try (Records records = Records.open(data.toString(), Clock.systemUTC())) {
            DemoSeasons.load(records);
        }
        JsonNode byCommand = new JsonMapper()
                .readTree(Spoken.by("figures", "--data", data, "--indicator", "first-week-deaths", "--format", "json")
                        .exits(0)
                        .out())
                .get("figures")
                .get(0);
        assertEquals("Deaths in the first week", byCommand.get("title").asText());
        assertTrue(byCommand.get("denominator").asInt() > 200, byCommand.toString());
        try (Records records = Records.open(data.toString(), Clock.systemUTC());
                Site site = Site.start(records, "127.0.0.1", 0)) {
            assertEquals(byCommand, new JsonMapper().readTree(get(site, "/api/v1/figures/first-week-deaths")));
            assertTrue(get(site, "/").contains(">Deaths in the first week</a>"));
            String page = get(site, "/figures/first-week-deaths?by=pen");
            assertTrue(page.contains("<h1>Deaths in the first week</h1>"), page);
            assertTrue(page.contains("Agreed at the herd visit."), page);
            assertTrue(page.contains("first-week.yaml"), page);
        }
    }

    @Test
    void aWrongFileStopsTheCommandAndSaysWhereAndHowToMendIt() throws IOException {
        Files.writeString(file, OWN.replace("to: 7 d", "to: 12 h"));
        Spoken spoken = Spoken.by("figures", "--data", data).exits(1);
        assertEquals("", spoken.out());
        assertTrue(
                spoken.err().matches("(?s).*first-week\\.yaml[:,] ?(line )?6\\b.*12 h.*"),
                "not as expected: " + spoken.err());
        spoken.saysOnlyOneLineWith("first-week.yaml");
    }

    @Test
    void anUnknownKeyIsNotPassedOver() throws IOException {
        Files.writeString(file, OWN + "tagret: 5\n");
        Spoken.by("figures", "--data", data).exits(1).saysOnlyOneLineWith("tagret");
    }

    private static String get(Site site, String path) throws IOException, InterruptedException {
        HttpRequest request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + site.port() + path))
                .build();
        return HttpClient.newHttpClient()
                .send(request, HttpResponse.BodyHandlers.ofString())
                .body();
    }
}
