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
                "the gain could be nothing at all",
                "bare difference between late and early is more than chance alone makes likely, but with the delays that"
                        + " nobody wrote down placed worst it could be chance.",
                "so that it holds 152 of 211 and can show less than is said above",
                "7 pens, and 6 calves without one",
                "its 4 terms are kept against the rule of ten a term, which asks for 40 cases; there are 21.",
                "Here too there are fewer than ten cases a term: read it with care.",
                "knots at 4, 21, 61, 386 minutes",
                "have not been followed to the end, having left. Risks",
                "With all of them left out, the risk ratio of late to early treatment is 2.2 (1.1 to 4.4)",
                "counts as none by 24 hours, though missing is not no")) {
            assertTrue(page.toLowerCase(Locale.ROOT).contains(words.toLowerCase(Locale.ROOT)), words + ": " + page);
        }
        assertFalse(Pattern.compile("\\b1 cases").matcher(page).find(), page);
        assertFalse(page.contains("takes about") || page.contains("goes, it is settled"), page);
        assertEquals(2, page.split("Fitted by Firth").length, "once");
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

    @Test
    void ofFewCalvesNothingIsAdjustedAndEveryRowSaysWhatItCannot() {
        String page = words("/navels?pen=north+boxes&sex=female");
        for (String words : List.of(
                "Among female calves born in north boxes, of the 13 calves treated within 60 minutes of birth, 1 had",
                "Adjusted: none. Fewer than 5 cases: not adjusted.",
                "Minute by minute nothing is fitted. Fewer than 5 cases: not adjusted.",
                "adjusted (17): cannot be estimated",
                "crude (22): 0 (0 to 5.1)",
                "no risk ratio can be drawn",
                "6-24 h: no calf",
                "One pen holds both early and late calves.",
                "In one of the two groups no calf fell ill, so that the size of the difference is not known")) {
            assertTrue(page.contains(words), words + ": " + page);
        }
        for (String words :
                List.of("in five ways", "Each doubling", "1 cases", "exposed", "the strata", "counts as one")) {
            assertFalse(page.contains(words), words + ": " + page);
        }
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
