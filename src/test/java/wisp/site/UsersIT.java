package wisp.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.support.ui.WebDriverWait;
import wisp.browser.Browser;

/** The three for whom the pages are made, each from an answer to its calves, by keyboard alone. */
class UsersIT {
    private static final int DESK = 1400;
    private static final int MOST_STOPS = 250;

    @TempDir
    private static Path folder;

    private static RunningSite demo;
    private static Browser browser;

    @BeforeAll
    static void start() {
        demo = RunningSite.demo(folder.resolve("demo"));
        browser = Browser.start();
        browser.width(DESK);
    }

    @AfterAll
    static void stop() {
        browser.close();
        demo.close();
    }

    /** Tabs on to a link inside something, whose text begins so, and follows it; the address must change. */
    private static void follow(String inside, String text) {
        String before = browser.driver().getCurrentUrl();
        for (int i = 0; i < MOST_STOPS; i++) {
            new Actions(browser.driver()).sendKeys(Keys.TAB).perform();
            boolean here = (Boolean) browser.driver()
                    .executeScript(
                            "const on = document.activeElement; return on.localName === 'a'"
                                    + " && on.closest(arguments[0]) !== null"
                                    + " && on.textContent.replace(/[\u00a0\u202f]/g, ' ').trim().startsWith(arguments[1])",
                            inside,
                            text);
            if (here) {
                new Actions(browser.driver()).sendKeys(Keys.ENTER).perform();
                new WebDriverWait(browser.driver(), Duration.ofSeconds(30))
                        .until(driver -> !driver.getCurrentUrl().equals(before)
                                && driver.findElement(By.tagName("footer")).isDisplayed());
                return;
            }
        }
        throw new AssertionError("The Tab key does not reach " + text + " in " + inside + " of " + before);
    }

    private static String text(String css) {
        return browser.driver().findElement(By.cssSelector(css)).getText();
    }

    private static List<WebElement> all(String css) {
        return browser.driver().findElements(By.cssSelector(css));
    }

    @Test
    void theManagerGoesFromAFigureInRedToItsCalves() {
        browser.open(demo.address("/"));
        assertTrue(text(".answer").contains("3.7 % died between 24 h and 60 d (8 of 231"), text(".answer"));
        assertFalse(all(".standing.missed").isEmpty());
        follow(".findings", "Risk of diarrhoea by 60 days was 53.1 %, 14.6 percentage points higher than in 2024-25");
        assertEquals("Risk of diarrhoea by 60 days", text("h1"));
        assertTrue(text(".answer").contains("more than chance"), text(".answer"));
        follow(".choose", "115 counted");
        List<WebElement> rows = all("#calves tbody tr");
        assertEquals(115, rows.size());
        rows.forEach(row -> assertTrue(row.getText().contains("illness found"), row.getText()));
        follow("#calves tbody", "2025-26-");
        assertTrue(text("h1").startsWith("Calf "), text("h1"));
    }

    @Test
    void theManagerGoesFromMortalityToDeathsAndTheirCauses() {
        browser.open(demo.address("/?season=2024-25"));
        follow("section[aria-labelledby=deaths] table", "Pre-weaning mortality, 24 h to 60 days");
        follow(".choose", "");
        List<WebElement> dead = all("#calves tbody tr");
        assertFalse(dead.isEmpty());
        dead.forEach(row -> assertTrue(row.getText().contains("died"), row.getText()));
        browser.open(demo.address("/?season=2024-25"));
        int died = Integer.parseInt(cell("diarrhoea", "All ages").replaceAll("\\s*/.*", ""));
        follow("td:has(a[href*='season=2024-25&list=deaths.any.diarrhoea'])", "" + died);
        List<WebElement> rows = all("tbody tr");
        assertEquals(died, rows.size());
        rows.forEach(row -> assertTrue(row.getText().contains("died at"), row.getText()));
    }

    /** A cell of the deaths by cause and age. */
    private static String cell(String cause, String age) {
        List<String> heads =
                all("table.matrix thead th").stream().map(UsersIT::words).toList();
        WebElement row = all("table.matrix tbody tr").stream()
                .filter(one -> words(one.findElement(By.tagName("th"))).equals(cause))
                .findFirst()
                .orElseThrow();
        return words(row.findElements(By.cssSelector("th, td")).get(heads.indexOf(age)));
    }

    /** Selenium takes what lies in a closed fold for hidden and silent, though a desk shows it. */
    private static String words(WebElement one) {
        return one.getAttribute("textContent").replaceAll("[\u00a0\u202f]", " ").strip();
    }

    @Test
    void theVetGoesFromTheAnswerToItsDoubtsAndTheCalvesOfOneClass() {
        browser.open(demo.address("/navels"));
        assertTrue(text(".answer").contains("but the records fit anything from 0.5 to 2.0 times the risk"));
        assertTrue(text(".note").contains("not an experiment"));
        assertTrue(all("section[aria-labelledby=late] svg").stream().anyMatch(WebElement::isDisplayed));
        assertTrue(text("section[aria-labelledby=late]").contains("E-value 1.1"));
        assertTrue(text("section[aria-labelledby=if]").contains("calves, and there are 208"));
        WebElement row = all("section[aria-labelledby=classes] tbody tr").get(0);
        assertTrue(row.getText().startsWith("0-15 min 66 9"), row.getText());
        follow("section[aria-labelledby=classes] table", "66");
        List<WebElement> rows = all("#calves tbody tr");
        assertEquals(66, rows.size());
        assertEquals(
                9,
                rows.stream().filter(one -> one.getText().contains("counted")).count());
    }

    @Test
    void theFarmerGoesFromTheAnswerToTheDirtiestPenAndItsCalves() {
        browser.open(demo.address("/pens"));
        assertTrue(
                text(".answer")
                        .startsWith("North boxes gave more dirty calves than the other pens, by more than chance"),
                text(".answer"));
        follow("section[aria-labelledby=pens] table", "18");
        List<WebElement> rows = all("#calves tbody tr");
        assertEquals(18, rows.size());
        rows.forEach(row -> assertTrue(row.getText().contains("north boxes"), row.getText()));
        browser.open(demo.address("/pens"));
        follow("section[aria-labelledby=pens] table", "north boxes");
        assertTrue(text("h1").contains("irty"), text("h1"));
    }

    @Test
    void aMarkOfAPictureTellsItsNumbersAndOpensItsCalves() {
        browser.open(demo.address("/pens"));
        WebElement mark = all("main svg a").stream()
                .filter(one -> hover(one).startsWith("north boxes"))
                .filter(WebElement::isDisplayed)
                .findFirst()
                .orElseThrow();
        assertTrue(hover(mark).contains("18 of 33"), hover(mark));
        follow("main svg", hover(mark));
        assertEquals(18, all("#calves tbody tr").size());
    }

    private static String hover(WebElement mark) {
        return words(mark.findElement(By.tagName("title")));
    }
}
