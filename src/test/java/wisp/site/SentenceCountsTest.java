package wisp.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/** Every count of calves in a sentence or a table of the demo's pages opens as many calves as it says. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SentenceCountsTest {
    private static final Pattern SAID = Pattern.compile("<a class=\"said\" href=\"(/[^\"]*)\">([^<]*)</a>");
    private static final Pattern COUNT = Pattern.compile("<a href=\"(/[^\"]*)\">(\\d[\\d,]*)</a>");
    private static final Pattern NUMBER = Pattern.compile("\\d[\\d,]*");
    private static final String MIDWINTER = "as-of=2026-01-15";

    @TempDir
    private static Path folder;

    private final Map<String, Integer> opened = new HashMap<>();
    private RunningSite demo;

    @BeforeAll
    void serve() {
        demo = RunningSite.demo(folder.resolve("demo"));
    }

    @AfterAll
    void stop() {
        demo.close();
    }

    @Test
    void everyCountInASentenceOpensItsCalves() {
        int counts = 0;
        for (String page : List.of("/season", "/navels", "/pens", "/records", "/proof/tagged-inside-limit")) {
            int here = 0;
            for (String asked : List.of("", "season=2023-24", "season=all", MIDWINTER, "sex=female")) {
                here += check(page + "?" + asked, SAID);
            }
            assertTrue(here >= 5, page + ": " + here);
            counts += here;
        }
        assertTrue(counts > 150, counts + " counts");
    }

    @Test
    void everyCountInATableOpensItsCalves() {
        for (String page : List.of(
                "/season",
                "/season?" + MIDWINTER,
                "/pens",
                "/pens?" + MIDWINTER,
                "/records",
                "/records?" + MIDWINTER + "&sex=male",
                "/proof",
                "/proof?" + MIDWINTER,
                "/proof/first-tag",
                "/proof/registered-inside-limit?" + MIDWINTER,
                "/figures/preweaning-mortality?" + MIDWINTER,
                "/figures/navel-infection-risk-21d",
                "/figures/diarrhoea-case-fatality",
                "/figures/dirty-calves?by=pen")) {
            assertTrue(check(page, COUNT) > 1, page);
        }
    }

    @Test
    void calvesNotADayOldAreListed() {
        String page = Wire.spaced(demo.get("/navels?" + MIDWINTER).body());
        Matcher young = Pattern.compile("less not 24 hours old yet: <a href=\"([^\"]*)\">(\\d+)</a>")
                .matcher(page);
        assertTrue(young.find(), page);
        assertEquals(Integer.parseInt(young.group(2)), ListBehind.rows(demo, young.group(1)));
    }

    @Test
    void aListCallsCalvesByTheirTags() {
        for (String list : List.of(
                "/season/calves?list=deaths.any.",
                "/pens/calves?list=all.dirty",
                "/navels/calves?group=early",
                "/records/calves?thing=weight&recorded=no",
                "/figures/dirty-calves?part=numerator")) {
            assertTrue(
                    Pattern.compile("<a href=\"/calves/([^\"?]*)[^\"]*\">[A-Z]{2} [\\d ]+ \\(\\1\\)</a>")
                            .matcher(demo.get(list).body())
                            .find(),
                    list);
        }
    }

    @Test
    void theAnswersTextHasNoMarks() throws Exception {
        for (String question : List.of("season", "navels", "pens")) {
            JsonNode json = new JsonMapper()
                    .readTree(demo.get("/api/v1/questions/" + question).body());
            assertFalse(
                    Pattern.compile("[\uFDD0-\uFDD2]").matcher(json.toString()).find(), question);
        }
    }

    @Test
    void aThingNobodyKnowsOfIsRefused() {
        assertEquals(400, demo.get("/records/calves?thing=shoe-size").statusCode());
        assertEquals(400, demo.get("/records/calves?thing=dam&recorded=maybe").statusCode());
    }

    /** Follows every link of a page that the pattern finds; a count in words that are no number opens somebody. */
    private int check(String address, Pattern pattern) {
        String page = demo.get(address).body();
        assertFalse(Pattern.compile("[\uFDD0-\uFDD2]").matcher(page).find(), address);
        List<String> wrong = new ArrayList<>();
        int counts = 0;
        Matcher link = pattern.matcher(page.substring(page.indexOf("<main")));
        while (link.find()) {
            if (link.group(1).startsWith("/figures/") && !link.group(1).contains("#calves")
                    || link.group(1).startsWith("/calves/")) {
                continue;
            }
            counts++;
            int listed = opened.computeIfAbsent(link.group(1), href -> ListBehind.rows(demo, href));
            Integer said = number(link.group(2));
            if (said == null ? listed == 0 : said != listed) {
                wrong.add(address + ": \"" + link.group(2) + "\" opens " + listed + " at " + link.group(1));
            }
        }
        assertEquals(List.of(), wrong);
        return counts;
    }

    private static Integer number(String words) {
        Matcher number = NUMBER.matcher(words);
        return number.find()
                ? (Integer) Integer.parseInt(number.group().replace(",", ""))
                : words.toLowerCase(Locale.ROOT).startsWith("one") ? 1 : null;
    }
}
