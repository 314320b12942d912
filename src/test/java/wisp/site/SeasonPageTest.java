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
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import wisp.indicator.Definitions;
import wisp.log.MemoryLog;
import wisp.records.Records;

/** The season's page, pictures, tables, lists and JSON over real HTTP, on the demo and on an empty log. */
class SeasonPageTest {
    private static final HttpClient CLIENT = HttpClient.newHttpClient();
    private static final Pattern COUNT = Pattern.compile("href=\"(/season/calves\\?[^\"]*)\">(\\d+)</a>");
    private static Records demoRecords;
    private static Records noRecords;
    private static Site demo;
    private static Site empty;

    @BeforeAll
    static void start() throws IOException {
        Clock clock = Clock.systemUTC();
        Definitions own = Definitions.load(Path.of("src", "test", "resources", "definitions", "own"));
        demoRecords = new Records(new MemoryLog(clock), own, clock);
        noRecords = new Records(new MemoryLog(clock), Definitions.load(null), clock);
        try (BufferedReader lines = new BufferedReader(new InputStreamReader(
                SeasonPageTest.class.getResourceAsStream("/demo-data/demo.jsonl"), StandardCharsets.UTF_8))) {
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
        URI address = URI.create("http://127.0.0.1:" + site.port() + path);
        return CLIENT.send(HttpRequest.newBuilder(address).build(), HttpResponse.BodyHandlers.ofString());
    }

    private static JsonNode answer(String season) throws IOException, InterruptedException {
        HttpResponse<String> response = get(demo, "/api/v1/questions/season?season=" + season);
        assertEquals(200, response.statusCode(), response.body());
        return new JsonMapper().readTree(response.body());
    }

    @Test
    void thePageSaysWhatTheAnswerSays() throws IOException, InterruptedException {
        for (String season : List.of("2023-24", "2024-25", "2025-26")) {
            String page = Wire.spaced(get(demo, "/season?season=" + season).body());
            JsonNode answer = answer(season);
            answer.get("sentences")
                    .forEach(said ->
                            assertTrue(ListBehind.unlinked(page).contains(escaped(said.asText())), said::asText));
            answer.get("findings")
                    .forEach(found ->
                            assertTrue(page.contains(escaped(found.get("text").asText())), found::toString));
            assertEquals(page, Wire.spaced(get(demo, "/?season=" + season).body()));
        }
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;");
    }

    @Test
    void thePageIsLight() throws IOException, InterruptedException {
        for (String season : List.of("2023-24", "2024-25", "2025-26", "all")) {
            int bytes = get(demo, "/?season=" + season).body().getBytes(StandardCharsets.UTF_8).length;
            assertTrue(bytes < 150_000, season + " has " + bytes + " bytes");
        }
    }

    @Test
    void everyCountOpensAsManyCalvesAsItSays() throws IOException, InterruptedException {
        String page = get(demo, "/?season=2024-25").body();
        Matcher count = COUNT.matcher(page);
        int opened = 0;
        while (count.find()) {
            String list = get(demo, count.group(1).replace("&amp;", "&")).body();
            String table = list.substring(list.indexOf("<tbody"), list.indexOf("</tbody>"));
            assertEquals(Integer.parseInt(count.group(2)), table.split("<tr ", -1).length - 1, count.group(1));
            opened++;
        }
        assertTrue(opened > 10, "counts opened: " + opened);
    }

    @Test
    void theTableOfWeeksAddsUpToTheCalvesAndEpisodesOfTheSeason() throws IOException, InterruptedException {
        String page = get(demo, "/season/weeks?season=2025-26").body();
        String foot = page.substring(page.indexOf("<tfoot>"), page.indexOf("</tfoot>"));
        JsonNode answer = answer("2025-26");
        List<Integer> expected = new ArrayList<>(List.of(answer.get("calves").asInt()));
        for (JsonNode calendar : answer.get("illness_by_week")) {
            int episodes = 0;
            for (JsonNode week : calendar.get("weeks")) {
                episodes += week.get("episodes").asInt();
            }
            if (episodes > 0) {
                expected.add(episodes);
            }
        }
        List<Integer> said = new ArrayList<>();
        for (Matcher cell = Pattern.compile("<td class=\"number\">(\\d+)</td>").matcher(foot); cell.find(); ) {
            said.add(Integer.parseInt(cell.group(1)));
        }
        assertEquals(expected, said);
    }

    @Test
    void theOwnTargetStandsBesideThePublishedOne() throws IOException, InterruptedException {
        String page = Wire.spaced(get(demo, "/").body());
        assertTrue(page.contains("own below 4 %"));
        assertTrue(page.contains("below 5 %"));
        JsonNode mortality = figure(answer("2025-26"), "preweaning-mortality");
        assertEquals(0.04, mortality.get("own_target").get("below").asDouble());
        assertEquals(0.05, mortality.get("target").get("below").asDouble());
    }

    private static JsonNode figure(JsonNode answer, String id) {
        for (JsonNode figure : answer.get("figures")) {
            if (figure.get("id").asText().equals(id)) {
                return figure;
            }
        }
        throw new AssertionError("no figure " + id);
    }

    @Test
    void theTablesAreCsvAndAgreeWithTheAnswer() throws IOException, InterruptedException {
        JsonNode answer = answer("2025-26");
        for (String table : SeasonCsv.TABLES) {
            HttpResponse<String> csv = get(demo, "/season.csv?season=2025-26&table=" + table);
            assertEquals(200, csv.statusCode(), table);
            assertTrue(csv.headers().firstValue("Content-Type").orElse("").startsWith("text/csv"), table);
            assertTrue(csv.body().lines().count() > 1, table);
        }
        String figures = get(demo, "/season.csv?season=2025-26").body();
        String row = figures.lines()
                .filter(line -> line.startsWith("preweaning-mortality,"))
                .findFirst()
                .orElseThrow();
        JsonNode mortality = figure(answer, "preweaning-mortality");
        assertTrue(row.contains("," + mortality.get("numerator").asInt() + ","
                + mortality.get("denominator").asInt() + ","
                + mortality.get("value").asDouble() + ","));
        assertEquals(answer.get("figures").size() + 1, figures.lines().count());
    }

    @Test
    void whatIsNotThereIsRefusedWithTheMend() throws IOException, InterruptedException {
        assertTrue(get(demo, "/season.csv?table=none").body().contains("There is no table none."));
        assertTrue(get(demo, "/season.png?picture=none").body().contains("There is no picture none."));
        assertTrue(get(demo, "/?figure=none").body().contains("There is no figure none."));
        HttpResponse<String> list = get(demo, "/season/calves?list=none");
        assertEquals(400, list.statusCode());
        assertTrue(list.body().contains("The season has no list of that name."));
    }

    @Test
    void theWeeksHaveAPageWhoseBarsOpenTheirCalves() throws IOException, InterruptedException {
        String page = get(demo, "/season/weeks?season=2025-26").body();
        assertTrue(page.contains("list=born."));
        Matcher bar = Pattern.compile("href=\"(/season/calves\\?[^\"]*list=illness.diarrhoea[^\"]*)\"><title>"
                        + "[^<]*: (\\d+) found<")
                .matcher(page);
        int episodes = 0;
        while (bar.find()) {
            String list = get(demo, bar.group(1).replace("&amp;", "&")).body();
            String table = list.substring(list.indexOf("<tbody"), list.indexOf("</tbody>"));
            assertEquals(Integer.parseInt(bar.group(2)), table.split("<tr ", -1).length - 1, bar.group(1));
            episodes += Integer.parseInt(bar.group(2));
        }
        assertEquals(
                figure(answer("2025-26"), "diarrhoea-rate").get("numerator").asInt(), episodes);
    }

    @Test
    void anotherFigureCanBeDivided() throws IOException, InterruptedException {
        String page = get(demo, "/season?season=2025-26&figure=dirty-calves").body();
        assertTrue(page.contains("Dirty calves, season 2025-26, by group"));
        assertTrue(page.contains("/figures/dirty-calves?season=2025-26&amp;"));
    }

    @Test
    void filtersThatLeaveNobodySaySoAndLeadBack() throws IOException, InterruptedException {
        String page = get(demo, "/season?season=2025-26&pen=loft").body();
        assertTrue(page.contains("Among calves born in loft: no calf born in 2025-26 is recorded."), page);
        assertTrue(
                page.contains("<a href=\"/?season=2025-26&amp;figure=preweaning-mortality\">All calves of 2025-26</a>"),
                page);
        assertFalse(page.contains("<section"), "nothing is shown of nobody");
    }

    @Test
    void marksAreOfTheWholeLog() throws IOException, InterruptedException {
        assertTrue(Pattern.compile("\\d+ events of the whole log are marked</a> and not counted")
                .matcher(get(demo, "/season?pen=north+boxes&sex=female").body())
                .find());
    }

    @Test
    void theFirstDaySaysWhomItLeavesOutAndTheDeathsWhoHasNoHour() throws IOException, InterruptedException {
        JsonNode answer = answer("2025-26");
        JsonNode figure = figure(answer, "stillbirth");
        int without = figure.at("/excluded/birth-time-unknown").asInt();
        String wanted = " leaves out " + without + " whose hour of birth nobody wrote down, one of them born dead.";
        assertEquals(
                "The share dead within 24 h" + wanted, answer.at("/sentences/1").asText());
        assertEquals(
                answer.get("calves").asInt(),
                without + figure.get("denominator").asInt());
        assertTrue(Wire.spaced(get(demo, "/?season=2025-26").body())
                .contains("One calf born dead has no hour of birth on record: counted here"));
    }

    @Test
    void theTwoSharesOfEnoughColostrumSayHowTheyDiffer() throws IOException, InterruptedException {
        String season = get(demo, "/season?season=2025-26").body();
        assertTrue(season.contains("its <a href=\"/proof/colostrum-total?season=2025-26\">proof</a> is of every calf"));
        for (String proof : List.of("/proof", "/proof/colostrum-total")) {
            String page = get(demo, proof + "?season=2025-26").body();
            assertTrue(page.contains("unmeasured suckling"), page);
            assertTrue(page.contains("<a href=\"/figures/colostrum-in-time?season=2025-26\">the season’s figure</a>"));
        }
        JsonNode figure = figure(answer("2025-26"), "colostrum-in-time");
        int suckled = figure.at("/excluded/suckled-unmeasured").asInt();
        int inside = figure.get("numerator").asInt() + suckled;
        assertTrue(
                Wire.spaced(get(demo, "/proof/colostrum-total?season=2025-26").body())
                        .replaceAll("<[^>]*>", "")
                        .contains(inside + " of "));
    }

    @Test
    void theFilterFormStaysClosed() throws IOException, InterruptedException {
        String page = get(demo, "/season?sex=female").body();
        assertTrue(page.contains("Narrow or divide (in use: 1)"));
        assertFalse(page.substring(0, page.indexOf("<main")).contains("<details open"));
    }

    @Test
    void aTargetThatManyCalvesLeaveOpenIsNotCalledFew() throws IOException, InterruptedException {
        String page = get(demo, "/figures/preweaning-mortality?season=2025-26").body();
        assertTrue(page.contains("<span class=\"standing\">interval spans the target</span>"), page);
    }

    @Test
    void aFigureSaysTheWayFromEveryoneToThoseCounted() throws IOException, InterruptedException {
        String page = get(demo, "/figures/preweaning-mortality?season=2024-25").body();
        assertTrue(page.contains("<h2>From 238 calves to 227</h2>"), page);
        assertTrue(page.contains("everyone asked of</a>"));
        assertTrue(page.contains("A birth without an hour counts from midnight"));
        String rate = get(demo, "/figures/diarrhoea-rate?season=2024-25&part=numerator")
                .body();
        assertTrue(rate.contains("<strong>87</strong> counted, of 82 calves</a>"), rate);
        assertTrue(rate.contains(": 87, of 82 calves</h2>"));
    }

    @Test
    void aNewEventIsSeenAtOnce() throws IOException, InterruptedException {
        String before = get(empty, "/").body();
        assertTrue(before.contains("No calf is recorded."));
        assertFalse(before.contains("NaN"));
        assertTrue(before.contains("wisp import FILE"));
        assertTrue(before.contains("<p>No event is recorded yet. Everything here"), before);
        assertFalse(before.contains("No calf was born in what is asked for"));
        assertFalse(before.contains("<section"), "nothing is shown of nobody");
        String birth = "{\"specversion\":\"1.0\",\"id\":\"1\",\"source\":\"t\",\"type\":\"birth\",\"subject\":\"A\","
                + "\"time\":\"2026-03-01T06:00:00Z\",\"data\":{\"alive\":true}}";
        noRecords.take(List.of(noRecords.reader().read(birth)), false);
        assertTrue(ListBehind.unlinked(get(empty, "/").body())
                .contains("one calf was born; no figure of deaths can be given yet."));
    }
}
