package wisp.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Duration;
import java.util.function.Predicate;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.NoSuchElementException;
import org.openqa.selenium.StaleElementReferenceException;
import org.openqa.selenium.WebDriver;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.Select;
import org.openqa.selenium.support.ui.WebDriverWait;
import wisp.browser.Browser;

/** The list of what is due in a real browser: ticked by hand, by keyboard, without scripts, and while others record. */
class DueIT {
    private static final int PHONE = 360;

    @TempDir
    private Path folder;

    private RunningSite site;
    private Browser browser;

    @BeforeEach
    void start() {
        site = CalvingMorning.serve(folder);
        browser = Browser.start();
        browser.width(PHONE);
    }

    @AfterEach
    void stop() {
        browser.close();
        site.close();
    }

    @Test
    void aTickComesBackToItsPlaceInTheListWithAWayBack() {
        browser.open(site.address("/due"));
        one("#d-4-castrate .tick button").click();
        await(driver -> one("#recorded").getText().startsWith("Recorded: castrated"));
        WebElement recorded = one("#recorded");
        Number top = (Number) script("return arguments[0].getBoundingClientRect().top", recorded);
        assertTrue(top.doubleValue() >= 0 && top.doubleValue() < 700, "it is in view, at " + top);
        assertEquals(0, count("#d-4-castrate"));
        browser.driver().navigate().refresh();
        await(driver -> count("#recorded") == 1);
        one("#recorded .undo").click();
        await(driver -> one("h1").getText().startsWith("Mend: castrated"));
    }

    @Test
    void withoutScriptsAFormIsFilledInAndSent() {
        browser.scripts(false);
        browser.open(site.address("/due"));
        one("#d-2-first-tag summary").click();
        new Select(one("#d-2-first-tag select[name='data.ear']")).selectByValue("left");
        one("#d-2-first-tag input[name='data.number']").sendKeys("UK 123456 500200");
        one("#d-2-first-tag .mending button").click();
        await(driver -> count("#d-2-first-tag .wrong") == 1);
        assertTrue(one("#d-2-first-tag .wrong").getText().contains("check digit"), "its digit should be another");
        assertEquals(
                "UK 123456 500200",
                one("#d-2-first-tag input[name='data.number']").getAttribute("value"));
        one("#d-2-first-tag input[name='sure']").click();
        one("#d-2-first-tag .mending button").click();
        await(driver -> count("#recorded") == 1);
        assertEquals(0, count("#d-2-first-tag"));
    }

    @Test
    void theKeyboardAloneTicks() {
        browser.open(site.address("/due#d-4-castrate"));
        script("arguments[0].focus()", one("#d-4-castrate .who a"));
        browser.driver().switchTo().activeElement().sendKeys(Keys.TAB);
        browser.driver().switchTo().activeElement().sendKeys(Keys.ENTER);
        await(driver -> count("#recorded") == 1 && count("#d-4-castrate") == 0);
    }

    @Test
    void whatOthersRecordChangesTheListButNotAnOpenForm() {
        browser.open(site.address("/due"));
        one("#d-2-first-tag summary").click();
        one("#d-2-first-tag input[name='data.number']").sendKeys("UK 12345");
        double before = top("#d-2-first-tag");
        record("castrated", "26-096", "{\"method\":\"ring\",\"both_in\":true}");
        record("navel-treated", "26-101", "{}");
        await(driver -> count("#d-4-castrate") == 0 && count("#d-0-navel-treated") == 0);
        assertEquals(before, top("#d-2-first-tag"), 2, "nothing jumps");
        assertEquals("UK 12345", one("#d-2-first-tag input[name='data.number']").getAttribute("value"));
        assertTrue(
                browser.driver().switchTo().activeElement().getAttribute("name").equals("data.number"));
        record("tag-fitted", "26-100", "{\"number\":\"UK 123456 600097\",\"ear\":\"left\"}");
        await(driver -> count("#d-2-first-tag .elsewhere") == 1);
        assertEquals("UK 12345", one("#d-2-first-tag input[name='data.number']").getAttribute("value"));
    }

    @Test
    void whateverIsTappedIsLargeEnoughForAColdHand() {
        browser.open(site.address("/due?order=pen"));
        for (String what :
                new String[] {".tick button", ".write summary", ".who a", ".choose a", ".turn summary", "nav a"}) {
            for (WebElement one : browser.driver().findElements(By.cssSelector(what))) {
                assertTrue(one.getSize().height >= 44, what + " is " + one.getSize());
            }
        }
        assertFalse(
                browser.driver().findElements(By.cssSelector(".tick button")).isEmpty());
    }

    private void record(String type, String subject, String data) {
        String event = "{\"specversion\":\"1.0\",\"id\":\"live-" + type + subject
                + "\",\"source\":\"phone\",\"type\":\"" + type + "\",\"subject\":\"" + subject
                + "\",\"time\":\"2026-04-14T06:39:00Z\",\"data\":" + data + "}";
        assertEquals(
                201, site.post("/api/v1/events", "application/x-ndjson", event).statusCode());
    }

    private WebElement one(String css) {
        return browser.driver().findElement(By.cssSelector(css));
    }

    private int count(String css) {
        return browser.driver().findElements(By.cssSelector(css)).size();
    }

    private double top(String css) {
        return ((Number) script("return arguments[0].getBoundingClientRect().top", one(css))).doubleValue();
    }

    private Object script(String code, Object... with) {
        return browser.driver().executeScript(code, with);
    }

    private void await(Predicate<WebDriver> holds) {
        new WebDriverWait(browser.driver(), Duration.ofSeconds(30))
                .ignoring(StaleElementReferenceException.class)
                .ignoring(NoSuchElementException.class)
                .until(holds::test);
    }
}
