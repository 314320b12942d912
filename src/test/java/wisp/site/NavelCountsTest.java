package wisp.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
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
            Matcher cases = Pattern.compile("^[^:]*: (\\d+) cases of").matcher(mark.group(2));
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

    private int listed(String href) {
        return ListBehind.rows(demo, href);
    }
}
