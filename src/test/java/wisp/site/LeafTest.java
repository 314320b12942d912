package wisp.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Long lists are told on leaves that together hold each row once. */
class LeafTest {
    private static final Pattern ROW = Pattern.compile("scope=\"row\"><a href=\"(/calves/[^\"?#]*)");
    private static final Pattern NEXT = Pattern.compile("<a href=\"([^\"]*)\">The next (\\d+)</a>");

    @TempDir
    private static Path folder;

    private static RunningSite demo;

    @BeforeAll
    static void serve() {
        demo = RunningSite.demo(folder.resolve("demo"));
    }

    @AfterAll
    static void stop() {
        demo.close();
    }

    /** The rows of a list on all its leaves; as many as its first leaf says. */
    private static List<String> rows(String path) {
        List<String> rows = new ArrayList<>();
        int said = 0;
        for (String leaf = path; leaf != null; ) {
            String page = demo.get(leaf.replaceAll("#.*", "")).body();
            Matcher row = ROW.matcher(page);
            int here = 0;
            while (row.find()) {
                rows.add(row.group(1));
                here++;
            }
            assertTrue(here > 0 && here <= Leaf.ROWS, leaf + " has " + here);
            assertTrue(said == 0 || here == said, leaf + " has " + here + " where " + said + " were promised");
            Matcher next = NEXT.matcher(page);
            boolean more = next.find();
            said = more ? Integer.parseInt(next.group(2)) : 0;
            leaf = more ? next.group(1).replace("&amp;", "&") : null;
        }
        return rows;
    }

    @Test
    void theLeavesTogetherHoldEveryCalfOnce() {
        int calves = Json.read(demo.get("/api/v1/calves?season=all").body())
                .get("count")
                .asInt();
        assertTrue(calves > 2 * Leaf.ROWS);
        for (String list : List.of("/calves?season=all", "/figures/dirty-calves?season=all&part=all")) {
            List<String> rows = rows(list);
            assertEquals(rows.size(), new HashSet<>(rows).size(), list);
        }
        assertEquals(calves, rows("/calves?season=all").size());
    }

    @Test
    void filtersAndTheListsNameGoAlong() {
        String page = demo.get("/figures/dirty-calves?season=all&by=sex&part=denominator&stratum=female")
                .body();
        Matcher next = NEXT.matcher(page);
        assertTrue(next.find(), page);
        for (String kept : List.of("season=all", "by=sex", "part=denominator", "stratum=female", "leaf=2", "#calves")) {
            assertTrue(next.group(1).contains(kept), next.group(1));
        }
    }

    @Test
    void aSeasonOfTheDemoFitsOnOneLeaf() {
        assertFalse(demo.get("/calves").body().contains("class=\"leaves\""));
    }

    @Test
    void everyWeekOfALongDivisionStandsOnOneLeaf() {
        for (String path : List.of("/figures/diarrhoea-rate", "/navels")) {
            List<String> weeks = found(path + "?season=all&by=week", "scope=\"row\">(?:<a[^>]*>)?(2\\d{3}-W\\d\\d)<");
            Set<String> once = new LinkedHashSet<>(weeks);
            int tables = path.equals("/navels") ? 2 : 1; // of which the second holds the classes of delay
            assertEquals(weeks.size(), tables * once.size(), path);
            assertTrue(once.size() > 80, once.toString());
        }
    }

    @Test
    void besideAListOfCalvesALongDivisionIsOneLinkAway() {
        String page = demo.get("/figures/diarrhoea-rate?season=all&by=week&part=numerator")
                .body();
        assertFalse(page.contains("by week of birth</caption>"), page);
        assertTrue(page.contains("<a href=\"/figures/diarrhoea-rate?season=all&amp;by=week#strata\">"), page);
        page = demo.get("/figures/diarrhoea-rate?season=all&by=sex&part=numerator&leaf=1")
                .body();
        assertTrue(page.contains("by sex</caption>"), page);
    }

    @Test
    void everyCalfOutsideALimitStandsOnOneLeafOfItsProof() {
        for (String limit : List.of("colostrum-first", "navel-treated")) {
            String first = demo.get("/proof/" + limit + "?season=all").body();
            int said = count(first, "Every calf outside: (\\d+)") + count(first, "entered late \\((\\d+)\\)");
            List<String> calves =
                    found("/proof/" + limit + "?season=all", "<li><a href=\"(/calves/[^\"]*)\">[^<]*</a>: ");
            assertEquals(said, calves.size(), limit);
            assertEquals(said, new LinkedHashSet<>(calves).size(), limit);
        }
    }

    private static int count(String page, String pattern) {
        Matcher said = Pattern.compile(pattern).matcher(page);
        return said.find() ? Integer.parseInt(said.group(1)) : 0;
    }

    /** What a pattern's group finds on every leaf from this one on. */
    private static List<String> found(String path, String pattern) {
        List<String> found = new ArrayList<>();
        for (String leaf = path; leaf != null; ) {
            String page = demo.get(leaf.replaceAll("#.*", "")).body();
            String rows = page.substring(page.indexOf("<h1>")); // behind the alert, which names calves too
            Pattern.compile(pattern)
                    .matcher(rows)
                    .results()
                    .map(hit -> hit.group(1))
                    .forEach(found::add);
            Matcher next = NEXT.matcher(page);
            leaf = next.find() ? next.group(1).replace("&amp;", "&") : null;
        }
        return found;
    }

    @Test
    void aLeafThatIsNotThereIsRefused() {
        for (String leaf : List.of("0", "99", "x", "-1", "1.5")) {
            var answer = demo.get("/calves?season=all&leaf=" + leaf);
            assertEquals(400, answer.statusCode(), leaf);
            assertTrue(answer.body().contains("There is no leaf " + leaf + "."), answer.body());
            assertTrue(answer.body().contains("Write a number from 1 to 3."), answer.body());
        }
    }
}
