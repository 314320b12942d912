package wisp.site;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wisp.browser.Browser;

class PagesIT {
    private static final Path PICTURES = Path.of(System.getProperty("wisp.target", "target"), "screenshots");

    @TempDir
    private static Path folder;

    private static RunningSite demo;
    private static Browser browser;

    @BeforeAll
    static void start() {
        demo = RunningSite.demo(folder.resolve("demo"));
        browser = Browser.start();
    }

    @AfterAll
    static void stop() {
        browser.close();
        demo.close();
    }

    private static Map<String, String> pages() {
        Map<String, String> pages = new LinkedHashMap<>();
        pages.put("season", "/");
        pages.put("figure", "/figures/stillbirth");
        pages.put("figure-by-pen", "/figures/diarrhoea-risk-60d?by=pen");
        pages.put("figure-numerator", "/figures/preweaning-mortality?part=numerator");
        pages.put("figure-limit", "/figures/tagged-inside-limit?part=excluded");
        pages.put("calves", "/calves");
        pages.put("records", "/records");
        pages.put("error", "/figures/none");
        return pages;
    }

    @Test
    void axeFindsNothingAndNoPageIsWiderThanAPhone() {
        List<String> wrong = new ArrayList<>();
        for (int width : new int[] {360, 1400}) {
            for (boolean dark : new boolean[] {false, true}) {
                browser.width(width);
                browser.dark(dark);
                pages().forEach((name, path) -> {
                    browser.open(demo.address(path));
                    String shown = name + "-" + width + (dark ? "-dark" : "");
                    browser.photograph(PICTURES, shown);
                    browser.violations().forEach(one -> wrong.add(shown + " " + one));
                    if (browser.overflow() > 0) {
                        wrong.add(shown + " is " + browser.overflow() + " px too wide");
                    }
                });
            }
        }
        assertEquals(List.of(), wrong);
    }
}
