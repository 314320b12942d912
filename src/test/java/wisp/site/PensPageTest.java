package wisp.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import wisp.indicator.Definitions;
import wisp.log.MemoryLog;
import wisp.records.Records;

/** The pens' page, picture, table and JSON over real HTTP, on the demo and on an empty log. */
class PensPageTest {
    private static final HttpClient CLIENT = HttpClient.newHttpClient();
    private static Records demoRecords;
    private static Records noRecords;
    private static Site demo;
    private static Site empty;

    @BeforeAll
    static void start() throws IOException {
        Clock clock = Clock.systemUTC();
        demoRecords = new Records(new MemoryLog(clock), Definitions.load(null), clock);
        noRecords = new Records(new MemoryLog(clock), Definitions.load(null), clock);
        try (BufferedReader lines = new BufferedReader(new InputStreamReader(
                PensPageTest.class.getResourceAsStream("/demo-data/demo.jsonl"), StandardCharsets.UTF_8))) {
            demoRecords.take(lines.lines().map(demoRecords.reader()::read).toList(), false);
        }
        demo = Site.start(demoRecords, "127.0.0.1", 0);
        empty = Site.start(noRecords, "127.0.0.1", 0);
    }

    @AfterAll
    static void stop() {
        demo.close();
        empty.close();
        demoRecords.close();
        noRecords.close();
    }

    private static HttpResponse<String> get(Site site, String path) throws IOException, InterruptedException {
        URI uri = URI.create("http://127.0.0.1:" + site.port() + path);
        return CLIENT.send(HttpRequest.newBuilder(uri).build(), HttpResponse.BodyHandlers.ofString());
    }

    private static JsonNode json(String path) throws IOException, InterruptedException {
        return new JsonMapper().readTree(get(demo, path).body());
    }

    @Test
    void theAnswerStandsBeforeThePicture() throws Exception {
        HttpResponse<String> page = get(demo, "/pens?season=2025-26");
        assertEquals(200, page.statusCode());
        int answer = page.body().indexOf("North boxes gave more dirty calves than the other pens");
        assertTrue(answer > 0 && answer < page.body().indexOf("<svg"), page.body());
        assertFalse(page.body().contains("<script>"), "nothing on the page is made by a script");
        assertTrue(page.body().length() < 150_000, () -> page.body().length() + " characters");
    }

    @Test
    void theJsonHasEveryFieldThatIsFixed() throws Exception {
        JsonNode json = json("/api/v1/questions/pens?season=2025-26");
        JsonNode pen = json.get("pens").get(0);
        for (String field : ("pen n dirty share low high mean_score z limits_95 limits_998 shrunken shrunken_low"
                        + " shrunken_high probability_dirtiest")
                .split(" ")) {
            assertTrue(pen.hasNonNull(field), field);
        }
        assertEquals(2, pen.get("limits_95").size());
        assertEquals(2, pen.get("limits_998").size());
        for (String path : ("/overall/n /overall/dirty /overall/share /no_pen /spread/a /spread/b /spread/boundary"
                        + " /homogeneity/chi_square /homogeneity/df /homogeneity/p")
                .split(" ")) {
            assertFalse(json.at(path).isMissingNode(), path);
        }
    }

    @Test
    void everyPensCountOpensThatManyCalves() throws Exception {
        for (JsonNode pen : json("/api/v1/questions/pens?season=2025-26").get("pens")) {
            String calves = pen.get("calves").textValue();
            assertEquals(
                    pen.get("dirty").intValue(),
                    json(calves + "&part=numerator").get("calves").size(),
                    calves);
            assertEquals(
                    pen.get("n").intValue(),
                    json(calves + "&part=denominator").get("calves").size(),
                    calves);
        }
    }

    @Test
    void theTablesCountsLeadToAPageOfThatManyCalves() throws Exception {
        String page = get(demo, "/pens?season=2025-26&sex=female").body();
        Matcher link = Pattern.compile("href=\"(/figures/dirty-calves[^\"]*part=numerator[^\"]*)#calves\">(\\d+)</a>")
                .matcher(page);
        int links = 0;
        while (link.find()) {
            String address = link.group(1).replace("&amp;", "&");
            assertTrue(address.contains("sex=female") && address.contains("by=pen"), address);
            String list = get(demo, address).body();
            String title = "(calving pen: ";
            assertTrue(list.contains(title) && list.contains("): " + link.group(2) + "</h2>"), address);
            links++;
        }
        assertTrue(links >= 5, page);
    }

    @Test
    void theTableAsCsvHasTheSameNumbersAsTheJson() throws Exception {
        String[] lines = get(demo, "/pens.csv?season=2025-26").body().split("\\R");
        JsonNode pens = json("/api/v1/questions/pens?season=2025-26").get("pens");
        assertTrue(lines[0].startsWith("pen,n,dirty,share,low,high,mean_score,z,"), lines[0]);
        assertEquals(pens.size(), lines.length - 1);
        for (int i = 0; i < pens.size(); i++) {
            String[] cells = lines[i + 1].split(",");
            assertEquals(pens.get(i).get("pen").textValue(), cells[0]);
            assertEquals(pens.get(i).get("share").doubleValue(), Double.parseDouble(cells[3]), 1e-12);
        }
    }

    @Test
    void thePictureIsAPng() throws Exception {
        HttpResponse<String> picture = get(demo, "/pens.png");
        assertEquals(200, picture.statusCode());
        assertEquals("image/png", picture.headers().firstValue("content-type").orElse(""));
    }

    @Test
    void anEmptyLogStillHasAPage() throws Exception {
        HttpResponse<String> page = get(empty, "/pens");
        assertEquals(200, page.statusCode());
        assertTrue(page.body().contains("No calf of all seasons is on record, so there is nothing to say of pens."));
        assertEquals(200, get(empty, "/pens.png").statusCode());
        assertEquals(200, get(empty, "/pens.csv").statusCode());
        assertEquals(200, get(empty, "/api/v1/questions/pens").statusCode());
    }

    @Test
    void onePenHasAPageWithoutAComparison() throws Exception {
        HttpResponse<String> page = get(demo, "/pens?season=2025-26&pen=north+boxes");
        assertEquals(200, page.statusCode());
        assertTrue(page.body().contains("With one pen there is nothing to compare it with."), page.body());
    }
}
