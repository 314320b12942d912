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
import java.nio.file.Path;
import java.time.Clock;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wisp.records.Records;
import wisp.site.Site;

class DueCommandTest {
    @TempDir
    private static Path data;

    @BeforeAll
    static void load() {
        try (Records records = Records.open(data.toString(), Clock.systemUTC())) {
            DemoSeasons.load(records);
        }
    }

    @Test
    void theListIsThatOfTheApi() throws IOException, InterruptedException {
        String said = Spoken.by(
                        "due", "--data", data, "--on", "2026-02-20", "--as-of", "2026-02-20", "--format", "json")
                .exits(0)
                .out();
        JsonNode command = new JsonMapper().readTree(said);
        assertTrue(command.get("count").intValue() > 10, said);
        try (Records records = Records.open(data.toString(), Clock.systemUTC());
                Site site = Site.start(records, "127.0.0.1", 0)) {
            String address = "http://127.0.0.1:" + site.port() + "/api/v1/due?on=2026-02-20&as-of=2026-02-20";
            HttpRequest request = HttpRequest.newBuilder(URI.create(address)).build();
            HttpResponse<String> answer =
                    HttpClient.newHttpClient().send(request, HttpResponse.BodyHandlers.ofString());
            assertEquals(new JsonMapper().readTree(answer.body()), command);
        }
    }

    @Test
    void aPenIsWhereACalfStandsNow() throws IOException {
        JsonNode all = list();
        String pen = "weaner yard";
        long there = 0;
        for (JsonNode item : all.get("items")) {
            there += pen.equals(item.get("pen").asText()) ? 1 : 0;
        }
        JsonNode some = list("--pen", pen);
        assertTrue(there > 0);
        assertEquals(there, some.get("count").longValue());
    }

    @Test
    void theTableHasALineAnItemAndTheWaysThatAreLeft() {
        String table = Spoken.by("due", "--data", data, "--on", "2026-02-20", "--as-of", "2026-02-20")
                .exits(0)
                .out();
        assertTrue(table.startsWith("Due on Fri 20 Feb 2026 00:00 (Europe/London): "), table);
        assertTrue(table.contains("impossible now"), table);
        assertTrue(table.contains("    Clamp: "), table);
        assertTrue(table.contains("Local law and the vet decide"), table);
        assertTrue(table.contains("What these limits stand on:"), table);
        assertTrue(table.contains("(from memory, read 2026-11)"), table);
    }

    @Test
    void aWrongDayIsRefusedWithTheMend() {
        Spoken.by("due", "--data", data, "--on", "soon")
                .exits(1)
                .saysOnlyOneLineWith("on: \"soon\" is not a date. Write it as 2026-03-31");
    }

    @Test
    void aFolderThatIsNotThereIsRefused() {
        Spoken.by("due", "--data", data.resolve("nothing")).exits(1).saysOnlyOneLineWith("There is no data folder");
    }

    @Test
    void aWrongFormatIsWrongUsage() {
        Spoken.by("due", "--data", data, "--format", "smoke").exits(2);
    }

    private static JsonNode list(String... more) throws IOException {
        Object[] words = new Object[9 + more.length];
        Object[] first = {"due", "--data", data, "--on", "2026-02-20", "--as-of", "2026-02-20", "--format", "json"};
        System.arraycopy(first, 0, words, 0, first.length);
        System.arraycopy(more, 0, words, first.length, more.length);
        return new JsonMapper().readTree(Spoken.by(words).exits(0).out());
    }
}
