package wisp.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What can be shown of each limit, over the demo and over a few calves. */
class ProofPageTest {
    private static final Pattern COUNT = Pattern.compile("part=([a-z-]+)#calves\">(\\d+)</a>");

    @TempDir
    private static Path folder;

    private static RunningSite demo;

    @BeforeAll
    static void start() {
        demo = RunningSite.demo(folder);
    }

    @AfterAll
    static void stop() {
        demo.close();
    }

    @Test
    void theShareIsThatOfTheFigure() {
        for (String id : new String[] {"tagged-inside-limit", "registered-inside-limit", "ring-window"}) {
            JsonNode figure = Json.read(demo.get("/api/v1/figures/" + id).body());
            String page = ListBehind.unlinked(demo.get("/proof/" + id).body());
            String said = figure.get("numerator").asText() + " of "
                    + figure.get("denominator").asText() + " calves were inside the limit";
            assertTrue(page.contains(said), said);
        }
    }

    @Test
    void everyCountOpensAsManyCalves() {
        String page = demo.get("/proof/tagged-inside-limit").body();
        Matcher count = COUNT.matcher(page);
        int seen = 0;
        while (count.find()) {
            String list = demo.get("/proof/tagged-inside-limit?part=" + count.group(1))
                    .body();
            list = list.substring(list.indexOf("<section id=\"calves\">"));
            list = list.substring(0, list.indexOf("</section>"));
            assertEquals(Integer.parseInt(count.group(2)), list.split("<li>", -1).length - 1, count.group(1));
            seen++;
        }
        assertTrue(seen >= 4, page); // one a part, and those of the sentence
    }

    @Test
    void figuresAndTheSeasonLeadToTheProof() {
        assertTrue(demo.get("/figures/tagged-inside-limit").body().contains("href=\"/proof/tagged-inside-limit\""));
        assertFalse(demo.get("/figures/stillbirth").body().contains("/proof/"));
        assertTrue(demo.get("/").body().contains("href=\"/proof\""));
    }

    @Test
    void stepsGoByTheirTitlesAndStandOnce() {
        String page = demo.get("/proof").body();
        assertTrue(page.contains("First ear tag"), page);
        assertTrue(page.contains("Look at the navel again, day 7"), page);
        assertTrue(page.contains("Ask the laboratory for the result"), page);
        assertFalse(page.contains("/proof/register\""), page); // the same calves as the figure above it
        assertFalse(page.contains("tissue-sampled-inside-limit"), page); // England sets no such limit
    }

    @Test
    void everyLimitOfTheListOpens() {
        String page = demo.get("/proof").body();
        Matcher link = Pattern.compile("href=\"(/proof/[a-z0-9-]+)\"").matcher(page);
        int seen = 0;
        while (link.find()) {
            assertEquals(200, demo.get(link.group(1)).statusCode(), link.group(1));
            assertEquals(200, demo.get(link.group(1) + ".csv").statusCode(), link.group(1));
            seen++;
        }
        assertTrue(seen > 8, page);
        assertEquals(404, demo.get("/proof/nothing").statusCode());
        assertEquals(400, demo.get("/proof/ring-window?part=half").statusCode());
    }

    @Test
    void enteredLateIsNotDoneLate() {
        try (SmallSite site = new SmallSite()) {
            site.event("birth", "in-time", "2026-09-01T06:00:00Z", "{\"alive\":true,\"sex\":\"female\"}");
            site.event("birth", "late", "2026-09-01T06:00:00Z", "{\"alive\":true,\"sex\":\"female\"}");
            site.event("birth", "never", "2026-09-01T06:00:00Z", "{\"alive\":true,\"sex\":\"female\"}");
            site.event("registered", "late", "2026-10-05T09:00:00Z", "{}");
            site.recordedLater("registered", "in-time", "2026-09-20T09:00:00Z", "2026-10-20T09:00:00Z", "{}");
            String page = ListBehind.unlinked(
                    Wire.spaced(site.get("/proof/registered-inside-limit").body()));
            assertTrue(page.contains("1 of 3 calves were inside the limit"), page);
            assertTrue(page.contains("One of them was written down after the limit had passed"), page);
            String outside = page.substring(page.indexOf("id=\"outside\""), page.indexOf("id=\"entered-late\""));
            assertTrue(outside.contains(">late<") && outside.contains(">never<"), outside);
            assertFalse(outside.contains(">in-time<"), outside);
            assertTrue(outside.contains("7 days late"), outside); // the last day was 28 September (day 27)
        }
    }

    @Test
    void whatCannotBeJudgedStandsInTheListOfLimitsAndOpensItsCalves() {
        String page = demo.get("/proof").body();
        Matcher count = Pattern.compile(
                        "data-head=\"cannot be judged\"><a href=\"/proof/sample-result\\?part=left-out#calves\">(\\d+)</a>")
                .matcher(page);
        assertTrue(count.find(), page);
        String list = demo.get("/proof/sample-result?part=left-out").body();
        assertTrue(list.contains("Cannot be judged: " + count.group(1) + " calves"), list);
    }

    @Test
    void daysOfASampleAreCountedFromItsSending() {
        String result = demo.get("/proof/sample-result").body();
        assertTrue(result.contains("Days since sending") && !result.contains("the day of birth"), result);
        String sample = demo.get("/proof/tagged-inside-limit").body();
        assertTrue(sample.contains("Day of life, 0 the day of birth"), sample);
    }

    @Test
    void anEmptyFolderSaysHowToBringRecords() {
        try (SmallSite site = new SmallSite()) {
            String page = site.get("/proof").body();
            assertTrue(page.contains("Nothing is recorded yet") && page.contains("wisp import FILE"), page);
        }
        assertFalse(demo.get("/proof").body().contains("Nothing is recorded yet"));
    }

    @Test
    void whereNobodyIsSettledItSaysSo() {
        try (SmallSite site = new SmallSite()) {
            assertTrue(site.get("/proof/ring-window").body().contains("No calf is settled yet"));
            assertEquals(200, site.get("/proof").statusCode());
        }
    }
}
