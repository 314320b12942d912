package wisp.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wisp.browser.Browser;

/** How the demo's pages look on paper, in the dark on a phone, and on a very wide screen. */
class LookIT {
    private static final Path PICTURES = Path.of(System.getProperty("wisp.target", "target"), "screenshots");

    private static final int PHONE = 360;
    private static final int DESK = 1400;
    private static final int WIDE = 1920;

    /** Letters of prose in a line; some 80 are easy to read, and faces differ. */
    private static final int LETTERS = 85;

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

    /** Pages by name, each with the most sheets of paper that it may take. */
    private static Map<String, Integer> sheets() {
        Map<String, Integer> sheets = new LinkedHashMap<>();
        sheets.put("/", 7);
        sheets.put("/season/weeks", 2);
        sheets.put("/season/calves?list=illness.diarrhoea.week-1", 2);
        sheets.put("/navels", 1);
        sheets.put("/navels?by=season&season=all", 1);
        sheets.put("/navels/calves?group=late&cases=true", 2);
        sheets.put("/pens", 6);
        sheets.put("/pens/calves?list=all.scored", 10);
        sheets.put("/calves", 10);
        sheets.put("/calves/2025-26-0178", 5);
        sheets.put("/records", 6);
        sheets.put("/due?on=2025-10-15", 5);
        sheets.put("/proof", 2);
        sheets.put("/proof/colostrum-first", 7);
        sheets.put("/medicines?given-from=2026-01-01", 4);
        sheets.put("/samples", 9);
        sheets.put("/figures/diarrhoea-risk-60d?by=pen", 3);
        sheets.put("/figures/diarrhoea-rate?by=week&season=all", 6);
        sheets.put("/figures/preweaning-mortality?part=numerator", 3);
        sheets.put("/?by=moon&sex=both", 1);
        return sheets;
    }

    @Test
    void everyPagePrintsOnNoMoreSheetsThanItNeeds() throws IOException {
        List<String> wrong = new ArrayList<>();
        for (Map.Entry<String, Integer> page : sheets().entrySet()) {
            try (PDDocument paper = printed(page.getKey())) {
                if (paper.getNumberOfPages() > page.getValue()) {
                    wrong.add(page.getKey() + " takes " + paper.getNumberOfPages() + " sheets");
                }
            }
        }
        assertEquals(List.of(), wrong);
    }

    @Test
    void axesKeepTheirLetteringOnPaper() throws IOException {
        String season = words("/");
        assertTrue(season.contains("80%"), season);
        String figure = words("/figures/diarrhoea-risk-60d?by=pen");
        // in the picture and in the table
        assertTrue(figure.split("orchard shed", -1).length > 2, figure);
    }

    @Test
    void tablesStayTablesOnPaperAndTheirSumIsSaidOnce() throws IOException {
        assertTrue(words("/samples").contains("Calf State Tag number Taken Sent Result Laboratory"), "samples");
        String weeks = words("/season/weeks");
        assertEquals(2, weeks.split("\\ball 2\\d\\d", -1).length, weeks);
    }

    @Test
    void linksPrintTheirWordsAndNotTheirAddresses() throws IOException {
        for (String path : List.of("/", "/samples", "/figures/diarrhoea-rate?by=week&season=all")) {
            String words = words(path);
            assertTrue(!words.contains("http:") && !words.contains("season="), words);
        }
    }

    private static PDDocument printed(String path) throws IOException {
        browser.width(DESK);
        browser.open(demo.address(path));
        byte[] pdf = browser.print();
        Files.createDirectories(PICTURES);
        Files.write(PICTURES.resolve("paper" + path.replaceAll("\\W+", "-") + ".pdf"), pdf);
        return Loader.loadPDF(pdf);
    }

    private static String words(String path) throws IOException {
        try (PDDocument paper = printed(path)) {
            return new PDFTextStripper().getText(paper).replaceAll("[\\s\u00a0]+", " ");
        }
    }

    @Test
    void axeFindsNothingInTheDarkOnAPhoneNorInTheLightOnADesk() {
        List<String> wrong = new ArrayList<>();
        List<String> pages = List.of(
                "/", "/navels?by=pen", "/pens", "/calves/2025-26-0178", "/due?on=2025-10-15", "/records", "/samples");
        for (String path : pages) {
            for (boolean dark : new boolean[] {true, false}) {
                browser.width(dark ? PHONE : DESK);
                browser.dark(dark);
                browser.open(demo.address(path));
                browser.photograph(PICTURES, (dark ? "dark" : "light") + path.replaceAll("\\W+", "-"));
                browser.violations().forEach(one -> wrong.add(path + (dark ? " dark " : " light ") + one));
            }
        }
        browser.dark(false);
        assertEquals(List.of(), wrong);
    }

    @Test
    void noLineOfProseIsTooLongToRead() {
        List<String> wrong = new ArrayList<>();
        browser.width(WIDE);
        for (String path : sheets().keySet()) {
            browser.open(demo.address(path));
            browser.longLines(LETTERS).forEach(line -> wrong.add(path + ": " + line));
        }
        assertEquals(List.of(), wrong);
    }
}
