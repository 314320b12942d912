package wisp.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static wisp.site.Wire.event;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
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

class PagesIT {
    private static final Path PICTURES = Path.of(System.getProperty("wisp.target", "target"), "screenshots");

    private static final int PHONE = 360;
    private static final int DESK = 1400;
    private static final int WIDE = 1920;

    @TempDir
    private static Path folder;

    private static RunningSite demo;
    private static RunningSite corrected;
    private static RunningSite empty;
    private static RunningSite morning;
    private static Browser browser;

    @BeforeAll
    static void start() {
        demo = RunningSite.demo(folder.resolve("demo"));
        corrected = RunningSite.over(folder.resolve("corrected"));
        empty = RunningSite.over(folder.resolve("empty"));
        morning = CalvingMorning.serve(folder.resolve("morning"));
        String life = String.join(
                "\n",
                event(
                        "1",
                        "birth",
                        "A",
                        "2026-03-01T08:00:00Z",
                        "{\"alive\":true,\"pen\":\"yard\",\"weight_kg\":41.5}"),
                event("2", "navel-treated", "A", "2026-03-01T09:00:00Z", "{\"product\":\"iodine\"}"),
                event(
                        "3",
                        "illness-found",
                        "A",
                        "2026-03-09T09:00:00Z",
                        "{\"condition\":\"diarrhoea\",\"severity\":2}"),
                event(
                        "4",
                        "treated",
                        "A",
                        "2026-03-09T10:00:00Z",
                        "{\"medicine\":\"fluids\",\"condition\":\"diarrhoea\"}"),
                event("5", "weighed", "A", "2026-02-01T09:00:00Z", "{\"weight_kg\":40}"),
                event(
                        "6",
                        "amended",
                        "A",
                        "2026-03-10T09:00:00Z",
                        "{\"event_source\":\"shed\",\"event_id\":\"2\",\"time\":\"2026-03-01T08:10:00Z\",\"data\":{}}"),
                event(
                        "7",
                        "tag-fitted",
                        "A",
                        "2026-03-02T09:00:00Z",
                        "{\"number\":\"UK 123450 600001\",\"ear\":\"left\"}"),
                event("8", "tissue-sampled", "A", "2026-03-02T09:01:00Z", "{}"),
                event("9", "sample-result", "A", "2026-03-09T09:00:00Z", "{\"result\":\"positive\"}"),
                event(
                        "10",
                        "sample-result",
                        "UK 123450 600007",
                        "2026-03-09T09:00:00Z",
                        "{\"result\":\"inconclusive\"}"));
        assertEquals(
                201,
                corrected.post("/api/v1/events", "application/x-ndjson", life).statusCode());
        browser = Browser.start();
    }

    @AfterAll
    static void stop() {
        browser.close();
        demo.close();
        corrected.close();
        empty.close();
        morning.close();
    }

    /** Every kind of page, by the name of its photograph. */
    private static Map<String, String> pages() {
        Map<String, String> pages = new LinkedHashMap<>();
        pages.put("season", demo.address("/"));
        pages.put("figure", demo.address("/figures/stillbirth"));
        pages.put("figure-by-pen", demo.address("/figures/diarrhoea-risk-60d?by=pen"));
        pages.put("figure-numerator", demo.address("/figures/preweaning-mortality?part=numerator"));
        pages.put("figure-excluded", demo.address("/figures/tagged-inside-limit?part=excluded"));
        pages.put("calves", demo.address("/calves?sex=female&pen=north%20boxes"));
        pages.put("calf", demo.address("/calves/2025-26-0178"));
        pages.put("calf-corrected", corrected.address("/calves/A"));
        pages.put("navels", demo.address("/navels"));
        pages.put("navels-by-pen", demo.address("/navels?by=pen"));
        pages.put("navel-calves", demo.address("/navels/calves?group=late&cases=true"));
        pages.put("pens", demo.address("/pens"));
        pages.put("pen-calves", demo.address("/pens/calves?list=all.scored"));
        pages.put("season-weeks", demo.address("/season/weeks"));
        pages.put("season-calves", demo.address("/season/calves?list=illness.diarrhoea.week-1"));
        pages.put("leaf", demo.address("/calves?season=all&leaf=3"));
        pages.put("samples", demo.address("/samples"));
        pages.put("samples-alert", corrected.address("/samples"));
        pages.put("due", morning.address("/due"));
        pages.put("due-by-pen", morning.address("/due?order=pen"));
        pages.put("due-open", morning.address("/due?open=d-5-castrate&worker=Ann"));
        pages.put("due-demo", demo.address("/due?on=2025-10-15"));
        pages.put("due-past", morning.address("/due?as-of=2026-04-13"));
        pages.put("calf-due", morning.address("/calves/26-092"));
        pages.put("records", demo.address("/records"));
        pages.put("proofs", demo.address("/proof"));
        pages.put("proof", demo.address("/proof/tagged-inside-limit"));
        pages.put("medicines", demo.address("/medicines?given-from=2026-01-01"));
        pages.put("error", demo.address("/?by=moon&sex=both"));
        pages.put("empty", empty.address("/"));
        pages.put("undescribed", corrected.address("/"));
        return pages;
    }

    @Test
    void axeFindsNothingOnAnyPageOnPhoneAndDesk() {
        List<String> wrong = new ArrayList<>();
        pages().forEach((name, address) -> {
            for (int width : new int[] {PHONE, DESK}) {
                show(address, width, width == DESK);
                browser.photograph(PICTURES, name + "-" + width);
                browser.violations().forEach(one -> wrong.add(name + "-" + width + " " + one));
            }
        });
        assertEquals(List.of(), wrong);
    }

    @Test
    void noPageIsWiderThanItsWindow() {
        List<String> wrong = new ArrayList<>();
        for (int width : new int[] {320, PHONE, 768, DESK, WIDE}) {
            pages().forEach((name, address) -> {
                show(address, width, false);
                if (browser.overflow() > 0) {
                    wrong.add(name + " is " + browser.overflow() + " px wider than " + width);
                }
            });
        }
        assertEquals(List.of(), wrong);
    }

    @Test
    void theKeyboardReachesFiltersAndLinksAndItsPlaceIsSeen() {
        show(demo.address("/"), PHONE, false);
        List<Browser.Stop> stops = browser.stops(30);
        List<String> first = stops.stream().map(Browser.Stop::what).limit(13).toList();
        assertEquals(
                List.of(
                        "a To the page's content",
                        "a Wisp",
                        "a Season",
                        "a Due",
                        "a Navels",
                        "a Pens",
                        "a Calves",
                        "a Medicines",
                        "a Samples",
                        "a Records",
                        "select season",
                        "button Show",
                        "summary Narrow or divide"),
                first);
        assertTrue(
                stops.stream().anyMatch(stop -> stop.what().contains("events of the whole log are marked")),
                stops.toString());
        stops.forEach(stop -> assertTrue(stop.seen() && stop.inView(), stop.toString()));
    }

    @Test
    void theSkipLinkLeadsToTheContent() {
        show(demo.address("/"), DESK, false);
        browser.stops(1);
        browser.driver().switchTo().activeElement().sendKeys(Keys.ENTER);
        assertEquals("main", browser.driver().switchTo().activeElement().getAttribute("id"));
    }

    @Test
    void withoutScriptsNothingIsMissing() {
        browser.width(PHONE);
        String paths = "/ /navels?by=pen /pens /figures/dirty-calves?by=pen /calves/2025-26-0178 /records"
                + " /due?on=2025-10-15";
        for (String path : paths.split(" ")) {
            browser.open(demo.address(path));
            String with = browser.driver().findElement(By.tagName("main")).getText();
            browser.scripts(false);
            browser.open(demo.address(path));
            String without = browser.driver().findElement(By.tagName("main")).getText();
            browser.scripts(true);
            assertEquals(with, without, path);
        }
    }

    @Test
    void filtersWorkByHand() {
        browser.width(DESK);
        browser.open(demo.address("/"));
        new Select(browser.driver().findElement(By.name("season"))).selectByValue("2023-24");
        browser.driver().findElement(By.cssSelector(".filters button")).click();
        await(driver -> heading().equals("Season 2023-24"));
        browser.driver().findElement(By.linkText("Stillbirth")).click();
        await(driver -> heading().equals("Stillbirth"));
        browser.driver().findElement(By.cssSelector(".choose a")).click();
        await(driver -> {
            List<WebElement> rows = driver.findElements(By.cssSelector("#calves tbody tr"));
            By count = By.cssSelector(".choose a[aria-current] strong");
            return driver.findElement(count).getText().equals("" + rows.size());
        });
        await(driver -> {
            driver.findElement(By.cssSelector("#calves tbody tr a")).click();
            return true;
        });
        await(driver -> heading().startsWith("Calf 2023-24-")); // born dead, without a tag
    }

    /** A click returns before the next page is there; what is asked of it is asked again until it holds. */
    private void await(Predicate<WebDriver> holds) {
        new WebDriverWait(browser.driver(), Duration.ofSeconds(30))
                .ignoring(StaleElementReferenceException.class)
                .ignoring(NoSuchElementException.class)
                .until(holds::test);
    }

    private String heading() {
        return browser.driver().findElement(By.tagName("h1")).getText();
    }

    @Test
    void whatIsRecordedMeanwhileShowsOnTheOpenPage() {
        show(corrected.address("/calves"), DESK, false);
        assertEquals(
                201,
                corrected
                        .post("/api/v1/events", "application/json", Wire.birth("live", "newborn"))
                        .statusCode());
        await(driver -> !driver.findElements(By.linkText("newborn")).isEmpty());
    }

    @Test
    void mainActionsAreLargeEnoughForAColdHand() {
        show(demo.address("/"), PHONE, false);
        for (String what : List.of("nav a", ".filters select", ".filters button", ".figures tbody th a")) {
            for (WebElement one : browser.driver().findElements(By.cssSelector(what))) {
                if (one.isDisplayed()) {
                    assertTrue(one.getSize().height >= 44, what + " is " + one.getSize());
                }
            }
        }
    }

    private static void show(String address, int width, boolean dark) {
        browser.width(width);
        browser.dark(dark);
        browser.open(address);
    }
}
