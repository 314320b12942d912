package wisp.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static wisp.site.Wire.event;

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
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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
                    json(pen.get("dirty_calves").textValue()).get("calves").size(),
                    calves);
            assertEquals(pen.get("n").intValue(), json(calves).get("calves").size(), calves);
        }
    }

    @Test
    void theTablesCountsLeadToAPageOfThatManyCalves() throws Exception {
        String page = get(demo, "/pens?season=2025-26&sex=female").body();
        Matcher link = Pattern.compile(
                        "href=\"(/figures/dirty-calves[^\"]*by=pen[^\"]*part=numerator[^\"]*)#calves\">(\\d+)</a>")
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

    /** Every number in the page's text and pictures that opens calves, with the calves that its list shows. */
    private static int opened(Site site, String address) throws Exception {
        String page = get(site, address).body();
        Matcher link = Pattern.compile(
                        "<a (?:class=\"said\" )?href=\"(/(?:pens/calves|figures/dirty-calves)\\?[^\"]*)\""
                                + ">(?:<title>([^<]*)</title>)?[A-Za-z ]*(\\d*)")
                .matcher(page);
        Map<String, Integer> shown = new HashMap<>();
        int links = 0;
        while (link.find()) {
            String said = link.group(2) == null ? link.group(3) : markCount(link.group(2));
            String list = link.group(1).replace("&amp;", "&");
            if (said.isEmpty()) {
                continue;
            }
            if (!shown.containsKey(list)) {
                shown.put(list, rows(get(site, list.replaceAll("#.*", ""))));
            }
            assertEquals(Integer.parseInt(said), shown.get(list), address + " opens " + list);
            links++;
        }
        return links;
    }

    /** A mark of a picture says "12 of 60 dirty" and opens the dirty ones. */
    private static String markCount(String words) {
        Matcher counts = Pattern.compile("(\\d+) of \\d+").matcher(words);
        return counts.find() ? counts.group(1) : "";
    }

    private static int rows(HttpResponse<String> list) {
        assertEquals(200, list.statusCode(), list.body());
        String behind = list.body().substring(Math.max(0, list.body().indexOf("id=\"calves\"")));
        Matcher body = Pattern.compile("<tbody.*?</tbody>", Pattern.DOTALL).matcher(behind);
        assertTrue(body.find(), list.body());
        return body.group().split("<tr[ >]", -1).length - 1;
    }

    @Test
    void everyNumberOnTheDemoOpensAsManyCalves() throws Exception {
        assertTrue(opened(demo, "/pens?season=2025-26") > 100);
        assertTrue(opened(demo, "/pens?season=2024-25&sex=female") > 100);
        assertTrue(opened(demo, "/pens?season=2025-26&as-of=2026-01-15&pen=north+boxes") > 20);
    }

    @Test
    void noCountOnThePageIsWithoutItsCalves() throws Exception {
        String page = get(demo, "/pens?season=2025-26").body();
        Matcher bare = Pattern.compile("<td class=\"number[^>]*>(?:<span>)?\\s*([1-9]\\d*)(?: of|\\s*<)")
                .matcher(page);
        assertFalse(bare.find(), () -> bare.group());
        assertFalse(Pattern.compile("</a> of [1-9]").matcher(page).find());
        assertFalse(
                Pattern.compile("<g><title>[^<]*: [1-9]\\d* of").matcher(page).find(), "a mark without its calves");
    }

    @Test
    void everyNumberOfASmallSiteOpensAsManyCalves() throws Exception {
        List<String> events = new ArrayList<>();
        events.add(event("bed-A", "pen-bedded", "A", "2026-03-01T05:00:00Z", "{}"));
        for (int i = 0; i < 12; i++) {
            String calf = "C" + i;
            String day = String.format("2026-03-%02d", 2 + i);
            String pen = i % 4 == 3 ? "" : ",\"pen\":\"" + (i % 4 == 2 ? "lane & field" : "A") + "\"";
            events.add(event(calf + "b", "birth", calf, day + "T06:00:00Z", "{\"alive\":true" + pen + "}"));
            String score = "{\"score\":" + i % 3 + "}";
            events.add(event(calf + "s", "cleanliness-scored", calf, day + "T07:00:00Z", score));
        }
        String ill = "{\"condition\":\"diarrhoea\"}";
        events.add(event("ill-2", "illness-found", "C2", "2026-03-10T06:00:00Z", ill));
        events.add(event("ill-4", "illness-found", "C4", "2026-03-12T06:00:00Z", ill));
        events.add(event("ill-5", "illness-found", "C5", "2026-03-07T06:30:00Z", ill));
        events.add(event("end", "noted", "C0", "2026-05-01T06:00:00Z", "{\"text\":\"seen\"}"));
        Clock clock = Clock.systemUTC();
        try (Records records = new Records(new MemoryLog(clock), Definitions.load(null), clock);
                Site small = Site.start(records, "127.0.0.1", 0)) {
            records.take(events.stream().map(records.reader()::read).toList(), false);
            String page = get(small, "/pens").body();
            assertTrue(page.contains("3</a> scored calves have no pen on record"), page);
            assertTrue(page.contains("left-out\">1</a> of any illness"), page);
            assertTrue(page.contains("ill.diarrhoea.left-out\">"), page);
            assertTrue(page.contains("calves born in places never bedded"), page);
            assertTrue(opened(small, "/pens") > 25, page);
            String list =
                    get(small, "/pens/calves?list=ill.diarrhoea.dirty-ill").body();
            assertTrue(list.contains("Dirty calves: ") && list.contains("C2") && !list.contains("C4"), list);
        }
    }

    @Test
    void aListThatIsNotThereIsRefusedWithTheMend() throws Exception {
        HttpResponse<String> list = get(demo, "/pens/calves?list=none");
        assertEquals(400, list.statusCode());
        assertTrue(list.body().contains("The pens have no list of that name."));
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
    void everyDotOfTheFunnelHasItsPensName() throws Exception {
        String page = get(demo, "/pens?season=2025-26").body();
        String wide =
                page.substring(page.indexOf("picture-wide"), page.indexOf("</svg>", page.indexOf("picture-wide")));
        for (String name : List.of("cubicles", "field", "north boxes", "old dairy, south boxes", "straw yard")) {
            assertTrue(wide.contains(">" + name + "</text>"), name);
        }
        assertTrue(page.contains("old dairy, south boxes share one dot."), "the words for those who cannot see it");
        String narrow = page.substring(page.indexOf("picture-narrow"), page.indexOf("picture-wide"));
        assertTrue(narrow.contains(">north boxes</text>"), "what stands out keeps its name on a phone");
        assertTrue(narrow.contains("old dairy, south boxes</text>"), narrow);
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
    void whereNobodyRecordsBeddingPlacesAreNotSaidToBeWithoutIt() throws Exception {
        List<String> events = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            String pen = "{\"alive\":true,\"pen\":\"" + (i % 2 == 0 ? "A" : "B") + "\"}";
            events.add(event("b" + i, "birth", "C" + i, "2026-03-02T06:0" + i + ":00Z", pen));
            events.add(
                    event("s" + i, "cleanliness-scored", "C" + i, "2026-03-02T07:00:00Z", "{\"score\":" + i % 3 + "}"));
        }
        Clock clock = Clock.systemUTC();
        try (Records records = new Records(new MemoryLog(clock), Definitions.load(null), clock);
                Site small = Site.start(records, "127.0.0.1", 0)) {
            records.take(events.stream().map(records.reader()::read).toList(), false);
            String page = get(small, "/pens").body();
            assertTrue(page.contains("Nobody has written down a bedding or a cleaning of any of these places"), page);
            assertFalse(page.contains("<caption>Places</caption>"), page);
        }
    }

    @Test
    void onePenHasAPageWithoutAComparison() throws Exception {
        HttpResponse<String> page = get(demo, "/pens?season=2025-26&pen=north+boxes");
        assertEquals(200, page.statusCode());
        assertTrue(page.body().contains("With one pen there is nothing to compare it with."), page.body());
    }
}
