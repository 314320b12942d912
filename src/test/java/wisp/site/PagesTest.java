package wisp.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PagesTest {
    private static final Pattern LINK = Pattern.compile("href=\"([^\"#]*)");
    private static final int HEAVIEST_PAGE = 60_000;

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
    void theFiguresOfThePageAreThoseOfTheApi() {
        String page = words(demo.get("/").body());
        for (JsonNode figure : Json.read(demo.get("/api/v1/figures").body()).get("figures")) {
            String id = figure.get("id").asText();
            String own = words(demo.get("/figures/" + id).body());
            if (figure.get("value").isNull()) {
                assertTrue(own.contains(figure.get("why").asText()), id);
                continue;
            }
            boolean rate = figure.get("measure").asText().equals("rate");
            String counts = String.format(
                    java.util.Locale.ENGLISH,
                    rate ? "%,d of %,d days" : "%,d of %,d",
                    figure.get("numerator").asLong(),
                    Math.round(figure.get("denominator").asDouble()));
            assertTrue(own.contains(counts), id + ": " + counts + " is not in " + own);
            assertTrue(page.contains(counts), id + ": " + counts + " is not on the season's page");
            int n = (int) figure.get("denominator").asDouble();
            double scale = rate ? 1 : 100;
            int places = rate ? (figure.get("value").asDouble() < 10 ? 2 : 1) : n < 100 ? 0 : 1;
            String value = String.format(
                    java.util.Locale.ROOT,
                    "%." + places + "f",
                    scale * figure.get("value").asDouble());
            assertTrue(own.contains(value), id + ": " + value + " is not in " + own);
        }
    }

    @Test
    void everyCountOnTheSeasonsPageOpensAListWithThatManyRows() {
        Matcher links = Pattern.compile("<a href=\"([^\"#]*part=[^\"#]*)#calves\">([\\d,]+)(\u00a0days)?</a>")
                .matcher(demo.get("/").body());
        int seen = 0;
        List<String> wrong = new ArrayList<>();
        while (links.find()) {
            seen++;
            String address = links.group(1).replace("&amp;", "&");
            int count = Integer.parseInt(links.group(2).replace(",", ""));
            String list = demo.get(address).body();
            int rows = rows(list);
            if (links.group(3) == null && rows != count && !address.contains("-rate?")) {
                wrong.add(address + " has " + rows + " rows for " + count);
            }
        }
        assertEquals(List.of(), wrong);
        assertTrue(seen > 80, "counts: " + seen);
    }

    private static int rows(String page) {
        Matcher heading = Pattern.compile("<h2>[^<]*: (?:\\d+, of )?(\\d+)(?: calves)?</h2>")
                .matcher(page);
        assertTrue(heading.find(), page);
        int rows =
                page.split("<tr role=\"row\"><th role=\"rowheader\" scope=\"row\"><a href=\"/calves/", -1).length - 1;
        assertEquals(Integer.parseInt(heading.group(1)), rows);
        return rows;
    }

    @Test
    void everyLinkOfEveryKindOfPageLeadsSomewhere() {
        Set<String> links = new TreeSet<>();
        for (String path : List.of(
                "/",
                "/?season=all",
                "/figures/stillbirth",
                "/figures/dirty-calves?by=pen&part=numerator&stratum=cubicles",
                "/figures/registered-inside-limit?part=pending",
                "/calves?sex=male&pen=passage",
                "/calves/2025-26-0178",
                "/records")) {
            HttpResponse<String> page = demo.get(path);
            assertEquals(200, page.statusCode(), path);
            Matcher link = LINK.matcher(page.body());
            while (link.find()) {
                links.add(link.group(1).replace("&amp;", "&"));
            }
        }
        links.remove("");
        assertTrue(links.size() > 150, "links: " + links.size());
        for (String link : links) {
            assertEquals(200, demo.get(link).statusCode(), link);
        }
    }

    @Test
    void filtersStayInEveryLink() {
        String page = demo.get("/?season=2024-25&sex=female&as-of=2025-12-31")
                .body()
                .replaceAll("(?s)<p class=\"(asof|only)\">.*?</p>", "");
        Matcher link = LINK.matcher(page);
        while (link.find()) {
            String address = link.group(1);
            if (!address.isEmpty() && !address.startsWith("/static/")) {
                assertTrue(
                        (address.contains("season=2024-25") || address.contains("season=2023-24&amp;"))
                                && address.contains("sex=female")
                                && address.contains("as-of=2025-12-31"),
                        address);
            }
        }
    }

    @Test
    void pagesAreLightOnTheWire() {
        int always = 0;
        for (String file : List.of("wisp.css", "picture.css", "mend.css", "live.js", "wisp.svg")) {
            always += bytes("/static/" + file);
        }
        assertTrue(bytes("/static/live.js") < 3_000, "the script grows");
        for (String path : List.of(
                "/",
                "/navels",
                "/pens",
                "/calves",
                "/records",
                "/figures/stillbirth?part=all",
                "/figures/diarrhoea-rate?by=pen&part=all")) {
            int weight = always + bytes(path);
            assertTrue(weight < HEAVIEST_PAGE, path + " weighs " + weight);
        }
    }

    /** As sent to a browser, which takes gzip. */
    private static int bytes(String path) {
        HttpResponse<byte[]> answer =
                demo.send(demo.request(path).header("Accept-Encoding", "gzip"), BodyHandlers.ofByteArray());
        assertEquals(200, answer.statusCode(), path);
        return answer.body().length;
    }

    @Test
    void noPageNeedsAScript() {
        for (String path : List.of("/", "/calves", "/records", "/figures/stillbirth?by=pen")) {
            String body = demo.get(path).body();
            assertFalse(body.contains("onclick=") || body.contains("javascript:"), path);
        }
    }

    @Test
    void picturesStandAtTheSameAddressAsPng() throws IOException {
        for (String path : List.of("/season.png", "/season.png?season=2023-24", "/figures/dirty-calves.png?by=pen")) {
            HttpResponse<byte[]> picture = demo.send(demo.request(path), BodyHandlers.ofByteArray());
            assertEquals(200, picture.statusCode(), path);
            assertEquals(
                    "image/png", picture.headers().firstValue("Content-Type").orElse(""));
            assertEquals(
                    1440, ImageIO.read(new ByteArrayInputStream(picture.body())).getWidth(), path);
        }
        HttpResponse<String> undivided = demo.get("/figures/dirty-calves.png");
        assertEquals(400, undivided.statusCode());
        assertTrue(undivided.body().contains("A figure that is not divided has no picture."));
    }

    @Test
    void theLimitOfLawStandsWithItsStatuteAndWhetherItWasVerified() {
        String tagged = words(demo.get("/figures/tagged-inside-limit").body());
        assertTrue(
                tagged.contains("by the end of day 20 of life. Cattle Identification Regulations 2007;"
                        + " gov.uk calf guidance"),
                tagged);
        assertTrue(tagged.contains("(verified against its source, last read 2026-11)"), tagged);
        String castrated = words(demo.get("/figures/castrated-inside-limit").body());
        assertTrue(
                castrated.contains("(from memory, not verified: check it before you rely on it (file of 2026-11))"),
                castrated);
    }

    @Test
    void aCalfIsFoundByAPartOfItsKeyOrTag() {
        String byKey = demo.get("/calves?find=0178").body();
        assertTrue(byKey.contains("2025-26-0178"));
        assertTrue(words(byKey).contains("One calf with “0178”"), words(byKey));
        assertTrue(words(demo.get("/calves?find=zebra").body()).contains("No calf with “zebra”"));
    }

    @Test
    void anEmptyLogSaysHowToBegin(@TempDir Path empty) {
        try (RunningSite site = RunningSite.over(empty)) {
            for (String path : List.of("/", "/calves", "/records", "/figures/stillbirth?by=pen&part=all")) {
                HttpResponse<String> page = site.get(path);
                assertEquals(200, page.statusCode(), path + page.body());
                assertTrue(words(page.body()).contains("This farm is not described yet"), path);
            }
            String season = words(site.get("/").body());
            assertTrue(season.contains("No calf is recorded."), season);
            assertTrue(season.contains("Bring events in with wisp import FILE"), season);
            assertEquals(200, site.get("/season.png").statusCode());
            assertEquals(200, site.get("/figures/stillbirth.png?by=pen").statusCode());
        }
    }

    /** A page's text, white space closed up. */
    private static String words(String html) {
        return html.replaceAll("(?s)<(script|style|svg).*?</\\1>", " ")
                .replaceAll("<[^>]*>", "")
                .replace("&nbsp;", " ")
                .replace('\u00a0', ' ')
                .replace("&#39;", "'")
                .replace("&#34;", "\"")
                .replaceAll("\\s+", " ");
    }
}
