package wisp.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import wisp.indicator.Definitions;
import wisp.log.MemoryLog;
import wisp.records.Records;
import wisp.simulation.Model;
import wisp.simulation.Season;
import wisp.simulation.StandardModel;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class NavelsPageTest {
    private static final long SEED = 3;
    private final HttpClient http = HttpClient.newHttpClient();
    private Records records;
    private Site site;

    @BeforeAll
    void serve() {
        Model model = StandardModel.model();
        Clock clock =
                Clock.fixed(model.calendar().cut().toInstant(), model.farm().zone());
        records = new Records(new MemoryLog(clock), Definitions.load((Path) null), clock);
        records.log().append(Season.simulate(model, 160, SEED), true);
        site = Site.start(records, "127.0.0.1", 0);
    }

    @AfterAll
    void stop() {
        site.close();
        records.close();
    }

    @Test
    void thePageOpensWithTheSentenceOfTheInterface() throws IOException, InterruptedException {
        String page = Wire.spaced(get("/navels").body());
        String sentence = json("/api/v1/questions/navels").get("sentence").asText();
        assertTrue(ListBehind.unlinked(page).contains("<p class=\"answer\">" + sentence + "</p>"), page);
        assertTrue(page.contains("not an experiment"));
        assertTrue(page.length() < 150_000, "the page has " + page.length() + " characters");
    }

    @Test
    void everyCountOpensAsManyCalves() throws IOException, InterruptedException {
        String page = get("/navels").body();
        Matcher counts = Pattern.compile(
                        "href=\"(/figures/navel-infection-landmark[^\"#]*part=[^\"#]*)[^\"]*\">(\\d+)</a>")
                .matcher(page);
        int opened = 0;
        while (counts.find() && opened < 6) {
            String list = get(counts.group(1).replace("&amp;", "&")).body();
            assertTrue(list.contains(": " + counts.group(2) + "</h2>"), counts.group());
            opened++;
        }
        assertEquals(6, opened, "seed " + SEED);
    }

    @Test
    void theTableAsCsvHasTheSameCounts() throws IOException, InterruptedException {
        HttpResponse<String> csv = get("/navels.csv");
        assertEquals(
                "text/csv; charset=utf-8",
                csv.headers().firstValue("content-type").orElse("").toLowerCase());
        String[] lines = csv.body().strip().split("\\R");
        assertEquals(7, lines.length);
        assertTrue(lines[0].startsWith("delay,n,cases,censored,risk,risk_low,risk_high,risk_at_21d"), lines[0]);
        JsonNode first = json("/api/v1/questions/navels").get("classes").get(0);
        assertTrue(lines[1].startsWith("0-15 min," + first.get("n") + "," + first.get("cases") + ","), lines[1]);
    }

    @Test
    void linksKeepTheFilters() throws IOException, InterruptedException {
        String page = get("/navels?season=all&sex=male").body();
        assertTrue(page.contains("/navels.csv?season=all&amp;sex=male"));
        assertTrue(page.contains("/figures/navel-infection-landmark?season=all&amp;sex=male&amp;"));
    }

    @Test
    void aSelectionWithoutCalvesIsAPageAllTheSame() throws IOException, InterruptedException {
        HttpResponse<String> page = get("/navels?pen=nowhere");
        assertEquals(200, page.statusCode());
        assertTrue(page.body().contains("is recorded.</p>"), page.body());
        assertTrue(page.body().contains("Bring events in with"), page.body());
        assertFalse(page.body().contains("<section"), "with no calf there is nothing more to say: " + page.body());
        assertEquals(200, get("/navels.csv?pen=nowhere").statusCode());
        assertEquals(200, get("/navels.png?pen=nowhere").statusCode());
        assertEquals(200, get("/navels-late.png?pen=nowhere").statusCode());
        assertEquals(200, get("/navels-dose.png?pen=nowhere").statusCode());
    }

    @Test
    void aQuestionThatThereIsNotIsAProblem() throws IOException, InterruptedException {
        HttpResponse<String> answer = get("/api/v1/questions/hooves");
        assertEquals(404, answer.statusCode());
        assertTrue(answer.body().contains("There is no question hooves"), answer.body());
    }

    private JsonNode json(String path) throws IOException, InterruptedException {
        return new ObjectMapper().readTree(get(path).body());
    }

    private HttpResponse<String> get(String path) throws IOException, InterruptedException {
        HttpRequest request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + site.port() + path))
                .build();
        return http.send(request, HttpResponse.BodyHandlers.ofString());
    }
}
