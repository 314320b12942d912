package wisp.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wisp.event.EventType;

/** One calf's page, the past days of every page, and the lists as CSV. */
class CalfPageTest {
    private static final JsonMapper JSON = new JsonMapper();
    private SmallSite site;

    @BeforeEach
    void serve() {
        site = new SmallSite();
        site.event("birth", "c", "2026-05-01T06:00:00+01:00", "{\"alive\":true,\"sex\":\"male\"}");
        site.event("navel-treated", "c", "2026-05-01T06:10:00+01:00", "{\"product\":\"iodine\"}");
        site.event("illness-found", "c", "2026-05-10T06:10:00+01:00", "{\"condition\":\"pneumonia\"}");
        site.event(
                "treated",
                "c",
                "2026-05-10T07:00:00+01:00",
                "{\"medicine\":\"florfenicol\",\"dose\":4,\"dose_unit\":\"ml\",\"meat_withdrawal_days\":37}");
        site.event("birth", "d", "2026-09-01T06:00:00+01:00", "{\"alive\":true,\"pen\":\"=1+1, \\\"x\\\"\"}");
        site.event("weighed", "d", "2026-08-01T06:00:00+01:00", "{\"weight_kg\":40}");
    }

    @AfterEach
    void stop() {
        site.close();
    }

    @Test
    void theEndOfWithdrawalIsSaid() {
        String page = Wire.spaced(site.get("/calves/c").body());
        assertTrue(page.contains("The recorded meat withdrawal ended with 16 Jun 2026."), page);
        assertTrue(page.contains("dose 4 ml"), page);
        String then = Wire.spaced(site.get("/calves/c?as-of=2026-05-20").body());
        assertTrue(then.contains("Not for food: the recorded meat withdrawal runs to the end of 16 Jun 2026."), then);
        assertFalse(site.get("/calves/d").body().contains("Medicines and withdrawal"));
    }

    @Test
    void theFirstDayIsToldInHoursAndMinutes() {
        site.event("cleanliness-scored", "c", "2026-05-01T09:44:00+01:00", "{\"score\":1}");
        site.event("colostrum-fed", "c", "2026-05-01T10:34:00+01:00", "{\"volume_l\":3}");
        String page = site.get("/calves/c").body().replace('\u00a0', ' ');
        assertTrue(page.contains(">3 h 44 min</text>"), page);
        assertTrue(page.contains("colostrum after 4 h 34 min."), page);
        assertFalse(page.contains("The hour of its birth is not known"), page);
    }

    @Test
    void anHourOfBirthThatNobodyKnowsIsSaid() {
        site.event("birth", "e", "2026-05-02T00:00:00+01:00", "{\"alive\":true,\"time_known\":false}");
        site.event("colostrum-fed", "e", "2026-05-02T10:34:00+01:00", "{\"volume_l\":3}");
        String page = site.get("/calves/e").body().replace('\u00a0', ' ');
        assertTrue(page.contains("born 2 May 2026, at an hour that nobody wrote down."), page);
        assertTrue(page.contains("The hour of its birth is not known"), page);
        assertFalse(page.contains("10 h 34 min"), page);
    }

    @Test
    void aProductsStrengthIsSaidOnce() {
        String strong = "{\"product\":\"iodine tincture 10 %\",\"concentration_percent\":10,\"method\":\"dip\"}";
        site.event("navel-treated", "c", "2026-05-01T18:00:00+01:00", strong);
        String other = "{\"product\":\"iodine 10 %\",\"concentration_percent\":0.5}";
        site.event("navel-treated", "c", "2026-05-01T19:00:00+01:00", other);
        String page = site.get("/calves/c").body().replace('\u00a0', ' ');
        assertTrue(page.contains("iodine tincture 10 %, dip"), page);
        assertTrue(page.contains("iodine 10 %, 0.5 %"), "where they disagree both are said");
    }

    @Test
    void howACalfDiedIsSaidInWords() {
        site.event("died", "c", "2026-05-11T06:00:00+01:00", "{\"cause\":\"pneumonia\",\"euthanised\":false}");
        String page = site.get("/calves/c").body().replace('\u00a0', ' ');
        assertTrue(page.contains("pneumonia, not euthanised"), page);
        assertFalse(page.contains("no euthanised"), page);
        assertTrue(page.contains("died of pneumonia (as recorded) on 11 May 2026 06:00 at "), page);
    }

    @Test
    void aDeadCalfHasNoNow() {
        site.event(
                "tag-fitted", "c", "2026-05-02T06:00:00+01:00", "{\"number\":\"UK 123450 600001\",\"ear\":\"left\"}");
        assertTrue(site.get("/calves/c").body().contains("<th scope=\"col\">Now</th>"));
        site.event("died", "c", "2026-05-11T06:00:00+01:00", "{}");
        String page = site.get("/calves/c").body().replace('\u00a0', ' ');
        assertTrue(page.contains("<th scope=\"col\">When it died</th>"), page);
        assertFalse(page.contains("<th scope=\"col\">Now</th>"), page);
        assertTrue(page.contains(" days, cause not recorded"), page);
    }

    @Test
    void leavingUnderWithdrawalIsMarked() {
        site.event("left", "c", "2026-06-16T23:00:00+01:00", "{\"reason\":\"sold\"}");
        String page = site.get("/calves/c").body();
        assertTrue(page.contains("It left under withdrawal: not for food before 16 Jun 2026 is over."), page);
        assertTrue(page.contains("class=\"caution alarm\""), page);
    }

    @Test
    void leavingAfterItsLastDayIsNot() {
        site.event("left", "c", "2026-06-17T00:00:00+01:00", "{\"reason\":\"sold\"}");
        assertFalse(site.get("/calves/c").body().contains("left under withdrawal"));
    }

    @Test
    void aTreatmentWithoutAPeriodIsAlarming() {
        site.event("treated", "c", "2026-05-20T07:00:00+01:00", "{\"medicine\":\"meloxicam\"}");
        String page = site.get("/calves/c").body();
        assertTrue(page.contains("A treatment has no withdrawal period recorded"), page);
        assertTrue(page.contains("class=\"caution alarm\""), page);
    }

    @Test
    void figuresOnThePageAreThoseOfTheApi() throws IOException {
        String page = site.get("/calves/c").body();
        Matcher rows = Pattern.compile("<a href=\"/figures/([a-z0-9-]+)\\?season=2026&amp;part=([a-z]+)#calves\">")
                .matcher(page);
        int counted = 0;
        while (rows.find()) {
            String list = "/api/v1/calves?season=2026&figure=" + rows.group(1) + "&part=" + rows.group(2);
            boolean there = false;
            for (JsonNode calf : JSON.readTree(site.get(list).body()).path("calves")) {
                there |= calf.path("calf").asText().equals("c");
            }
            assertTrue(there, list);
            counted++;
        }
        // one row a figure: a figure of episodes has one an episode, or one that says there is none
        assertEquals(site.records().definitions().indicators().size(), counted);
    }

    @Test
    void everyPageWorksOnAnyPastDayAndLeadsBack() {
        for (String path : List.of("/", "/navels", "/pens", "/calves", "/records", "/figures/stillbirth")) {
            for (String day : List.of("2025-01-01", "2026-05-01", "2026-05-10", "2026-12-31")) {
                var answer = site.get(path + "?as-of=" + day);
                assertEquals(200, answer.statusCode(), path + " on " + day);
                assertTrue(answer.body().contains("class=\"asof\""), path);
                String now = site.get(wayBack(answer.body())).body();
                assertEquals(title(answer.body()), title(now), path);
                assertFalse(now.contains("class=\"asof\""), path);
            }
            assertFalse(site.get(path).body().contains("class=\"asof\""), path);
        }
        String records = site.get("/records?as-of=2026-05-10").body();
        assertTrue(records.contains("at the end of 10 May 2026"), records);
        assertTrue(records.contains("Followed to 10 May 2026"), records);
        assertEquals(404, site.get("/calves/d?as-of=2026-05-10").statusCode());
    }

    /** Where a past day's banner leads. */
    private static String wayBack(String page) {
        return first("<a href=\"([^\"]*)\">Back to what is known now</a>", page).replace("&amp;", "&");
    }

    private static String title(String page) {
        return first("<title>([^<]*)</title>", page);
    }

    private static String first(String pattern, String page) {
        Matcher found = Pattern.compile(pattern).matcher(page);
        assertTrue(found.find(), page);
        return found.group(1);
    }

    @Test
    void listsComeAsCsv() {
        List<String> calves = site.get("/calves.csv?season=all").body().lines().toList();
        assertEquals(3, calves.size());
        assertTrue(calves.get(0).startsWith("calf,born_at,birth_time_known,birth_date,season,"), calves.get(0));
        assertTrue(calves.get(2).contains("\"=1+1, \"\"x\"\"\""), calves.get(2));
        assertEquals(
                2, site.get("/calves.csv?season=all&sex=male").body().lines().count());
        List<String> marks = site.get("/records.csv").body().lines().toList();
        assertEquals("subject,event,time,mark,problem,mend,event_source,event_id", marks.get(0));
        assertTrue(marks.get(1).startsWith("d,weighed,2026-08-01T06:00:00+01:00,before-birth,"), marks.get(1));
        String type =
                site.get("/records.csv").headers().firstValue("Content-Type").orElse("");
        assertTrue(type.startsWith("text/csv"), type);
    }

    @Test
    void theLiveScriptIsSmallAndKnowsEveryTypeOfEvent() throws IOException {
        try (InputStream file = CalfPageTest.class.getResourceAsStream("/web/live.js")) {
            String script = new String(file.readAllBytes(), StandardCharsets.UTF_8);
            assertTrue(script.length() < 8_000, "characters: " + script.length());
            List<String> words = Arrays.asList(script.split("[^a-z-]+"));
            for (EventType type : EventType.values()) {
                assertTrue(words.contains(type.wireName()), type.wireName());
            }
        }
        assertTrue(site.get("/").body().contains("/static/live.js"));
        assertFalse(site.get("/?as-of=2026-05-10").body().contains("/static/live.js"));
    }
}
