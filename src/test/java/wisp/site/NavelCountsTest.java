package wisp.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/** Every number on the demo's page of navels opens as many calves as it says. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class NavelCountsTest {
    private static final Pattern COUNT = Pattern.compile("<a href=\"(/[^\"]*)\">([\\d,]+)</a>");
    private static final Pattern MARK = Pattern.compile("<a href=\"(/[^\"]*)\"><title>([^<]*)</title>");

    @TempDir
    private static Path folder;

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
    void everyCountOpensAListOfJustSoManyCalves() {
        List<String> wrong = new ArrayList<>();
        int counts = 0;
        Set<String> seen = new HashSet<>();
        for (String address :
                List.of("/navels", "/navels?by=pen", "/navels?season=all&by=season", "/navels?sex=male")) {
            String page = demo.get(address).body();
            Matcher count = COUNT.matcher(page.substring(page.indexOf("<main")));
            while (count.find()) {
                String href = count.group(1).replace("&amp;", "&");
                if (seen.add(href)) {
                    counts++;
                    int listed = listed(href);
                    if (listed != Integer.parseInt(count.group(2).replace(",", ""))) {
                        wrong.add(address + ": " + count.group(2) + " opens " + listed + " at " + href);
                    }
                }
            }
        }
        assertEquals(List.of(), wrong);
        assertTrue(counts > 80, counts + " counts");
    }

    @Test
    void everyMarkOfEveryPictureHasWordsAndOpensItsCalves() {
        String page = demo.get("/navels?by=pen").body();
        Set<String> opened = new HashSet<>();
        Matcher mark = MARK.matcher(page);
        while (mark.find()) {
            String href = mark.group(1).replace("&amp;", "&");
            assertTrue(mark.group(2).contains(": "), mark.group(2));
            Matcher cases = Pattern.compile("^[^:]*: (\\d+) cases? of").matcher(mark.group(2));
            if (opened.add(href)) {
                int listed = listed(href);
                if (cases.find()) {
                    assertEquals(Integer.parseInt(cases.group(1)), listed, mark.group(2));
                } else {
                    assertTrue(listed > 0, mark.group(2));
                }
            }
        }
        // six classes, three ways, four knots to the same calves, and the pens
        assertTrue(opened.size() >= 12, opened.toString());
        for (String id : List.of("navel-classes", "navel-late", "navel-dose", "navel-parts")) {
            assertTrue(page.contains(id), id);
        }
        assertEquals(0, Pattern.compile("<g><title>").matcher(page).results().count(), "marks without a link");
    }

    @Test
    void eachWayOfComparingSaysItsCalvesAndHowItWasFitted() {
        String page = words("/navels?season=2024-25");
        for (String words : List.of(
                "crude (211)",
                "crude, of those adjusted (164)",
                "adjusted (164)",
                "on the 164 calves with all of that on record (47 have not)",
                "Not allowed for: birth at night.",
                "Fitted by Firth's penalised likelihood, because the columns separate the outcome.",
                "at 9 minutes like the middle one of those who were",
                "This stands on 164 calves of known delay",
                "as far as chance goes, it is settled",
                "With all of them left out, the risk ratio of late to early treatment is 2.2 (1.1 to 4.4)",
                "counts as none by 24 hours, though missing is not no")) {
            assertTrue(page.toLowerCase(Locale.ROOT).contains(words.toLowerCase(Locale.ROOT)), words + ": " + page);
        }
        assertFalse(Pattern.compile("\\b1 cases").matcher(page).find(), page);
        assertFalse(page.contains("takes about"), page);
        assertTrue(words("/navels").contains("−14 (−24 to +52)"), "two calves carry no tenths of a point");
    }

    @Test
    void overSeveralSeasonsEachIsComparedByItself() {
        String page = words("/navels?season=all");
        for (String words : List.of(
                "within pens and seasons (",
                "birth at night and season allowed for",
                "but not if the delays that nobody wrote down were placed worst: then it could be chance.",
                "each season is compared by itself")) {
            assertTrue(page.contains(words), words + ": " + page);
        }
        assertFalse(page.contains("It stays so"), page);
    }

    private String words(String path) {
        return demo.get(path)
                .body()
                .replaceAll("<[^>]+>", "")
                .replace("&#39;", "'")
                .replace('\u00a0', ' ');
    }

    private int listed(String href) {
        return ListBehind.rows(demo, href);
    }
}
