package wisp.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import wisp.browser.Browser;

/** What a phone folds away opens by a touch, stands open on a desk and is printed; the navels print on one sheet. */
class FoldsIT {
    private static final int PHONE = 360;
    private static final int DESK = 1400;

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

    private static void open(String path, int width) {
        browser.width(width);
        browser.dark(false);
        browser.open(demo.address(path));
    }

    private static long height() {
        return (Long) browser.driver().executeScript("return document.documentElement.scrollHeight");
    }

    private static List<WebElement> all(String css) {
        return browser.driver().findElements(By.cssSelector(css));
    }

    /** Selenium takes whatever lies in a closed fold for hidden, whatever the style sheet says; the browser knows. */
    private static boolean seen(WebElement one) {
        return (Boolean) browser.driver().executeScript("return arguments[0].checkVisibility()", one);
    }

    @Test
    void onAPhoneTheSeasonIsShortAndBeginsWithAnswerAndPicture() {
        open("/", PHONE);
        assertTrue(height() < 9_000, () -> height() + " px");
        int picture = all("#risks").get(0).getLocation().y;
        assertTrue(picture < 1_500, () -> "the picture begins at " + picture);
        for (WebElement summary : all(".fold > summary")) {
            assertTrue(summary.getSize().height >= 44, () -> summary.getText() + " is " + summary.getSize());
        }
    }

    @Test
    void aTouchOpensWhatIsFolded() {
        for (String path : List.of("/", "/pens", "/records")) {
            open(path, PHONE);
            browser.scripts(false);
            for (WebElement fold : all(".fold")) {
                WebElement content = fold.findElement(By.cssSelector(":scope > :not(summary)"));
                long before = height();
                browser.driver().executeScript("arguments[0].scrollIntoView({block: 'center'})", fold);
                fold.findElement(By.tagName("summary")).click();
                assertTrue(seen(content) && height() > before, fold.getText());
            }
            browser.scripts(true);
        }
    }

    @Test
    void rowsOfNobodyStandBehindTheirNumber() {
        open("/", PHONE);
        browser.driver().executeScript("document.querySelectorAll('.fold').forEach(one => one.open = true)");
        List<WebElement> zeros = all(".zeros > summary");
        assertFalse(zeros.isEmpty());
        for (WebElement summary : zeros) {
            long hidden = hidden(summary);
            assertEquals(hidden, Long.parseLong(summary.getText().split(" ")[0]), summary.getText());
            browser.driver().executeScript("arguments[0].scrollIntoView({block: 'center'})", summary);
            summary.click();
            assertEquals(0, hidden(summary), summary.getText());
        }
    }

    private static long hidden(WebElement summary) {
        return (Long) browser.driver()
                .executeScript(
                        "return [...arguments[0].parentElement.previousElementSibling.querySelectorAll('tr.zero')]"
                                + ".filter(row => getComputedStyle(row).display === 'none').length",
                        summary);
    }

    @Test
    void onAPhoneTheRecordsAreHalfAsLongAsTheyWere() {
        open("/records", PHONE);
        assertTrue(height() < 13_000, () -> height() + " px");
    }

    @Test
    void aCountOfOneDigitInASentenceIsLargeEnoughForAFinger() {
        open("/pens?season=2024-25", PHONE);
        List<WebElement> counts = all(".answer .said");
        assertFalse(counts.isEmpty());
        for (WebElement count : counts) {
            assertTrue(
                    count.getSize().width >= 24 && count.getSize().height >= 24,
                    () -> count.getText() + " is " + count.getSize());
        }
    }

    @Test
    void onADeskEverythingStandsOpen() {
        for (String path : List.of("/", "/pens", "/records")) {
            open(path, DESK);
            assertFalse(all(".fold").isEmpty());
            for (WebElement fold : all(".fold")) {
                assertTrue(seen(fold.findElement(By.cssSelector(":scope > :not(summary)"))));
                assertFalse(seen(fold.findElement(By.tagName("summary"))));
            }
        }
    }

    @Test
    void paperHasEverythingThatAPhoneFolds() throws IOException {
        for (String path : List.of("/", "/pens")) {
            open(path, PHONE);
            browser.scripts(false);
            byte[] pdf = browser.print();
            browser.scripts(true);
            String text;
            try (PDDocument paper = Loader.loadPDF(pdf)) {
                text = new PDFTextStripper().getText(paper).replaceAll("[\\s\u00a0\u202f]+", " ");
            }
            String wanted = path.equals("/")
                    ? "Same mix of calves|poor|Episodes per 1000 calf-days at risk"
                    : "no bedding on record|6 or more|any illness|Greenland and Robins";
            for (String words : wanted.split("\\|")) {
                assertTrue(text.contains(words), words + " is not in print: " + text);
            }
        }
    }

    @Test
    void picturesOnPaperKeepTheNumbersOfTheirAxes() throws IOException {
        for (String path : List.of("/", "/navels", "/pens")) {
            open(path, DESK);
            byte[] pdf = browser.print();
            try (PDDocument paper = Loader.loadPDF(pdf)) {
                String text = new PDFTextStripper().getText(paper);
                // tables and sentences write a blank before the sign, axes none
                assertTrue(text.contains("60%"), path + " prints its pictures without the numbers of an axis: " + text);
            }
        }
    }

    @Test
    void theNavelsPrintOnOneSheetForTheWall() throws IOException {
        for (String path : List.of("/navels", "/navels?by=pen")) {
            open(path, DESK);
            byte[] pdf = browser.print();
            try (PDDocument paper = Loader.loadPDF(pdf)) {
                assertEquals(1, paper.getNumberOfPages(), path);
                String text = new PDFTextStripper().getText(paper).replaceAll("[\\s\\u00a0]+", " ");
                for (String words : List.of(
                        "143 calves treated within 60 minutes",
                        "not an experiment",
                        "none by 24 h",
                        "E-value",
                        "Before you act on it",
                        "Followed to 20 May 2026")) {
                    assertTrue(text.contains(words), words + " is not in print: " + text);
                }
            }
        }
    }
}
