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
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wisp.records.Records;
import wisp.site.Site;

class FiguresCommandTest {
    @TempDir
    private static Path data;

    @BeforeAll
    static void load() throws IOException {
        Files.createDirectories(data.resolve("analytics"));
        Files.writeString(data.resolve("analytics").resolve("targets.yaml"), "stillbirth: {below: 0.02}\n");
        try (Records records = Records.open(data.toString(), Clock.systemUTC())) {
            DemoSeasons.load(records);
        }
    }

    @Test
    void theFiguresAreThoseOfTheApi() throws IOException, InterruptedException {
        String said = Spoken.by("figures", "--data", data, "--by", "pen", "--as-of", "2026-03-31", "--format", "json")
                .exits(0)
                .out();
        JsonNode command = new JsonMapper().readTree(said);
        try (Records records = Records.open(data.toString(), Clock.systemUTC());
                Site site = Site.start(records, "127.0.0.1", 0)) {
            String address = "http://127.0.0.1:" + site.port() + "/api/v1/figures?by=pen&as-of=2026-03-31";
            HttpRequest request = HttpRequest.newBuilder(URI.create(address)).build();
            HttpResponse<String> answer =
                    HttpClient.newHttpClient().send(request, HttpResponse.BodyHandlers.ofString());
            assertEquals(new JsonMapper().readTree(answer.body()), command);
        }
    }

    @Test
    void theTableHasALineAFigure() {
        String table = Spoken.by("figures", "--data", data).exits(0).out();
        assertTrue(table.startsWith("Season 2025-26, followed to 2026-05-20T"), table);
        assertTrue(table.contains("Stillbirth                                        6.03 3.63 to 9.87"), table);
        assertTrue(table.contains("    own target below 2.00: missed"), table);
    }

    @Test
    void everyWrongFilterIsSaidAtOnce() {
        Spoken spoken = Spoken.by("figures", "--data", data, "--by", "moon", "--sex", "both", "--from", "soon")
                .exits(1);
        assertEquals(3, spoken.err().strip().lines().count(), spoken.err());
    }

    @Test
    void anUnknownFigureIsNamedWithThoseThatThereAre() {
        Spoken spoken =
                Spoken.by("figures", "--data", data, "--indicator", "luck").exits(1);
        assertTrue(spoken.err().startsWith("There is no figure luck. Choose among: "), spoken.err());
        assertTrue(spoken.err().contains("stillbirth"), spoken.err());
    }
}
