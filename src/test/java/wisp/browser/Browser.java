package wisp.browser;

import com.deque.html.axecore.results.CheckedNode;
import com.deque.html.axecore.results.Rule;
import com.deque.html.axecore.selenium.AxeBuilder;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.openqa.selenium.Keys;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.print.PrintOptions;

/** A headless Chromium with a profile of its own, gone with it. */
public final class Browser implements AutoCloseable {
    private static final List<String> AXE_RULES =
            List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22a", "wcag22aa", "best-practice");

    private final Path profile;
    private final ChromeDriver driver;

    private Browser(Path profile, ChromeDriver driver) {
        this.profile = profile;
        this.driver = driver;
    }

    /** Starts one. */
    public static Browser start() {
        Chromium programs = Chromium.ready();
        try {
            Path profile = Files.createTempDirectory("wisp-chromium");
            ChromeOptions options = new ChromeOptions();
            options.setBinary(programs.browser().toFile());
            options.addArguments(
                    "--headless=new",
                    "--no-sandbox",
                    "--disable-dev-shm-usage",
                    "--disable-gpu",
                    "--disable-quic",
                    "--no-first-run",
                    "--disable-background-networking",
                    "--disable-component-update",
                    "--disable-sync",
                    "--lang=en-GB",
                    "--user-data-dir=" + profile);
            System.setProperty(
                    ChromeDriverService.CHROME_DRIVER_EXE_PROPERTY,
                    programs.driver().toString());
            ChromeDriver driver = new ChromeDriver(options);
            // a server that leaves a page waiting for a connection does so for its idle time of 30 s
            driver.manage().timeouts().pageLoadTimeout(Duration.ofSeconds(25));
            return new Browser(profile, driver);
        } catch (IOException disk) {
            throw new UncheckedIOException(disk);
        }
    }

    /** Sets the page's width in CSS pixels; phones below 600. */
    public void width(int pixels) {
        boolean phone = pixels < 600;
        driver.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of(
                        "width",
                        pixels,
                        "height",
                        phone ? 740 : 900,
                        "deviceScaleFactor",
                        phone ? 2 : 1,
                        "mobile",
                        phone));
    }

    /** Asks for the dark, or the light, colours. */
    public void dark(boolean dark) {
        driver.executeCdpCommand(
                "Emulation.setEmulatedMedia",
                Map.of("features", List.of(Map.of("name", "prefers-color-scheme", "value", dark ? "dark" : "light"))));
    }

    /** Lets pages run scripts, or not. */
    public void scripts(boolean run) {
        driver.executeCdpCommand("Emulation.setScriptExecutionDisabled", Map.of("value", !run));
    }

    /** Opens a page. */
    public void open(String address) {
        driver.get(address);
    }

    /** The driver itself. */
    public ChromeDriver driver() {
        return driver;
    }

    /** What axe finds wrong, one line a node; empty is good. */
    public List<String> violations() {
        List<String> found = new ArrayList<>();
        for (Rule rule : new AxeBuilder().withTags(AXE_RULES).analyze(driver).getViolations()) {
            for (CheckedNode node : rule.getNodes()) {
                found.add(rule.getId() + ": " + rule.getHelp() + " " + node.getTarget() + " " + node.getHtml());
            }
        }
        return found;
    }

    /** By how many pixels the page is wider than the window. */
    public long overflow() {
        return (Long) driver.executeScript(
                "return Math.max(0, document.scrollingElement.scrollWidth - document.documentElement.clientWidth)");
    }

    /** Paragraphs and points of lists whose lines are wider than so many usual letters. */
    public List<?> longLines(int letters) {
        return (List<?>) driver.executeScript(LONG_LINES, letters);
    }

    private static final String LONG_LINES = """
            const pen = document.createElement('canvas').getContext('2d');
            const sample = 'It was found in the calves that were treated later than the others of the pen.';
            return [...document.querySelectorAll('main p, main li, main dd, footer p')].filter(on => {
                const words = on.innerText || '';
                const style = getComputedStyle(on);
                if (words.length < arguments[0] || /flex|grid/.test(style.display) || on.querySelector('p, li')) { return false; }
                pen.font = style.font;
                return on.clientWidth > arguments[0] * pen.measureText(sample).width / sample.length;
            }).map(on => on.localName + '.' + on.className + ' ' + on.innerText.slice(0, 60));
            """;

    /** Presses Tab up to so many times and tells of each stop: what it is, and whether its focus can be seen. */
    public List<Stop> stops(int most) {
        List<Stop> stops = new ArrayList<>();
        driver.executeScript("window.scrollTo(0, 0); document.activeElement.blur()");
        for (int i = 0; i < most; i++) {
            new Actions(driver).sendKeys(Keys.TAB).perform();
            Map<?, ?> stop = (Map<?, ?>) driver.executeScript(STOP);
            if (stop == null) {
                break;
            }
            stops.add(new Stop(stop.get("what").toString(), (Boolean) stop.get("seen"), (Boolean) stop.get("inView")));
        }
        return stops;
    }

    /** One stop of the Tab key. */
    public record Stop(String what, boolean seen, boolean inView) {}

    private static final String STOP = """
            const on = document.activeElement;
            if (!on || on === document.body) { return null; }
            const style = getComputedStyle(on);
            const hit = on.querySelector && on.querySelector('.hit');
            const ring = style.outlineStyle !== 'none' && parseFloat(style.outlineWidth) > 0;
            const stroke = hit && getComputedStyle(hit).stroke !== 'none';
            const box = on.getBoundingClientRect();
            const name = on.name || on.getAttribute('aria-label') || on.textContent.trim().replace(/\\s+/g, ' ').slice(0, 60);
            return {what: on.localName + ' ' + name, seen: Boolean(ring || stroke),
                inView: box.bottom > 0 && box.top < innerHeight && box.right > 0 && box.left < innerWidth};
            """;

    /** Prints the page as a PDF of A4 sheets. */
    public byte[] print() {
        PrintOptions options = new PrintOptions();
        options.setPageSize(new org.openqa.selenium.print.PageSize(29.7, 21.0));
        return Base64.getDecoder().decode(driver.print(options).getContent());
    }

    /** Photographs the whole page into a folder. */
    public void photograph(Path folder, String name) {
        Map<String, Object> shot = driver.executeCdpCommand(
                "Page.captureScreenshot", Map.of("format", "png", "captureBeyondViewport", true));
        try {
            Files.createDirectories(folder);
            Files.write(
                    folder.resolve(name + ".png"),
                    Base64.getDecoder().decode(shot.get("data").toString()));
        } catch (IOException disk) {
            throw new UncheckedIOException(disk);
        }
    }

    @Override
    public void close() {
        driver.quit();
        try (Stream<Path> files = Files.walk(profile)) {
            files.sorted(java.util.Comparator.reverseOrder())
                    .forEach(file -> file.toFile().delete());
        } catch (IOException | UncheckedIOException left) {
            System.err.println("The profile " + profile + " was left behind.");
        }
    }
}
