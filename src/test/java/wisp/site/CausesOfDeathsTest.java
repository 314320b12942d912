package wisp.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From the figure of deaths to their causes, and what an empty folder may claim. */
class CausesOfDeathsTest {
    private static final List<String> BEFORE_WEANING = List.of("24 h to 7 d", "7 to 28 d", "28 to 60 d");

    @TempDir
    private static Path folder;

    private static RunningSite demo;
    private static RunningSite empty;

    @BeforeAll
    static void serve() {
        demo = RunningSite.demo(folder.resolve("demo"));
        empty = RunningSite.over(folder.resolve("empty"));
    }

    @AfterAll
    static void stop() {
        demo.close();
        empty.close();
    }

    private static String main(RunningSite site, String address) {
        String page = Wire.spaced(site.get(address).body());
        return page.substring(page.indexOf("<main"));
    }

    private static int count(String text, String regex) {
        Matcher found = Pattern.compile(regex).matcher(text);
        int count = 0;
        while (found.find()) {
            count++;
        }
        return count;
    }

    @Test
    void eachDeathOfTheFigureTellsItsRecordedCauseOrThatThereIsNone() {
        for (String season : List.of("2023-24", "2024-25", "2025-26")) {
            JsonNode answer = Json.read(
                    demo.get("/api/v1/questions/season?season=" + season).body());
            String list = main(demo, "/figures/preweaning-mortality?part=numerator&season=" + season);
            int deaths = 0;
            for (JsonNode cause : answer.at("/deaths/causes")) {
                int dead = BEFORE_WEANING.stream()
                        .mapToInt(age -> cause.get("by_age").get(age).asInt())
                        .sum();
                String words = cause.get("cause").asText();
                String said = words.equals("not recorded") ? "cause not recorded" : words;
                assertEquals(dead, count(list, ">died: " + Pattern.quote(said) + ", \\d"), season + " " + said);
                deaths += dead;
            }
            assertTrue(deaths > 5, season);
        }
    }

    @Test
    void lastSeasonsCausesStandInTheColumnsOfThisOnes() {
        String now = "/api/v1/questions/season?season=2025-26";
        JsonNode deaths = Json.read(demo.get(now).body()).get("deaths");
        JsonNode then = Json.read(demo.get(now.replace("2025-26", "2024-25")).body());
        assertEquals(
                then.at("/deaths/all/by_age"), deaths.at("/all/last_season_by_age"), "the same counts a season on");
        String page = main(demo, "/season?season=2025-26");
        int dead = deaths.at("/all/last_season_by_age/7 to 28 d").asInt();
        assertTrue(dead > 0);
        assertTrue(
                Pattern.compile("list=deaths\\.fourth_week\\.\">\\d+</a> / " + dead + "</td>")
                        .matcher(page)
                        .find(),
                page);
    }

    @Test
    void anAgeInHoursOfACalfWhoseHourOfBirthIsNotKnownSaysSo() {
        String list = main(demo, "/figures/preweaning-mortality?part=numerator&season=2024-25");
        Matcher row = Pattern.compile("<tr[^>]*>(?:(?!</tr>).)*2024-25-0148(?:(?!</tr>).)*</tr>")
                .matcher(list);
        assertTrue(row.find(), list);
        assertTrue(row.group().contains("age between 2 and 26 h (hour of birth not known)"), row.group());
        assertTrue(main(demo, "/season/calves?list=deaths.any.&season=2024-25")
                .contains("died at between 2 and 26 h (hour of birth not known), "));
    }

    @Test
    void noWordOfADeathIsDeniedByABareNo() {
        for (JsonNode calf :
                Json.read(demo.get("/api/v1/calves?season=2024-25").body()).get("calves")) {
            if (calf.path("exit").asText().equals("died")) {
                String page = main(demo, "/calves/" + calf.get("calf").asText());
                assertFalse(page.contains("no euthanised"), calf::toString);
            }
        }
    }

    @Test
    void anEmptyFolderComparesNothingAndReassuresNobody() {
        String page = main(empty, "/season");
        assertTrue(page.contains("<h1>All seasons</h1>"), page);
        assertTrue(page.contains("No calf is recorded."), page);
        assertFalse(
                page.contains("Nothing does")
                        || page.contains("0 groups")
                        || page.contains("0 comparisons")
                        || page.contains("season all"),
                page);
        assertTrue(main(demo, "/season?season=all").contains("<caption>Deaths, all seasons</caption>"));
        assertTrue(main(demo, "/season?season=2025-26").contains("<caption>Deaths, season 2025-26</caption>"));
    }

    @Test
    void aRatioWithoutAnUpperLimitIsSaidInWordsThatDoNotRepeatThemselves() {
        String page = main(demo, "/navels?by=place&season=2024-25");
        assertTrue(page.contains(" to any number"), page);
        assertFalse(page.contains("without a limit") || page.contains("no limit"), page);
    }
}
