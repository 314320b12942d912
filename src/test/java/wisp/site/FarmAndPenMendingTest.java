package wisp.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class FarmAndPenMendingTest {
    private final SmallSite site = new SmallSite();
    private String farm;
    private String bedded;

    @BeforeEach
    void record() {
        farm = site.event(
                "farm-described",
                "farm",
                "2025-08-01T00:00:00Z",
                "{\"name\":\"Hill\",\"zone\":\"Europe/London\",\"jurisdiction\":\"england\",\"enterprise\":\"dairy\","
                        + "\"seasons\":[{\"name\":\"2025-26\",\"from\":\"2025-08-01\",\"to\":\"2026-08-01\"}]}");
        bedded = site.event("pen-bedded", "yard", "2026-02-01T08:00:00Z", "{\"material\":\"straw\",\"depth_cm\":20}");
        site.event("birth", "A", "2026-03-01T08:00:00Z", "{\"alive\":true,\"pen\":\"yard\"}");
    }

    @AfterEach
    void stop() {
        site.close();
    }

    private static String mend(String id) {
        return "/records/mend?source=test&id=" + id;
    }

    @Test
    void theRecordsPageListsThemWithTheWayToTheirForm() {
        String page = site.get("/records").body();
        assertTrue(page.contains("seasons 2025-26 from 1 Aug 2025 to 31 Jul 2026"), page);
        assertTrue(page.contains("href=\"/records/mend?id=" + farm + "&amp;source=test\""), page);
        assertTrue(page.contains("href=\"/records/mend?id=" + bedded + "&amp;source=test\""), page);
        String past = site.get("/records?as-of=2026-03-02").body();
        assertTrue(past.contains("id=\"farm\""), past);
        assertFalse(past.contains("/records/mend"), past);
    }

    @Test
    void aPensEventIsCorrectedAndTheCorrectionTakenBack() {
        Map<String, String> form = site.form(site.get(mend(bedded)).body());
        form.put("action", "correct");
        form.put("data.material", "sawdust");
        String mended = site.send(mend(bedded), form).body();
        assertTrue(mended.contains("sawdust"), mended);
        String records = site.get("/records").body();
        assertTrue(records.contains("sawdust"), records);
        assertTrue(records.contains("take it back"), records);
        String correction = form.get("correction");
        String undo = "/records/mend?source=wisp:site&id=" + correction;
        Map<String, String> back = site.form(site.get(undo).body());
        back.put("action", "withdraw");
        back.put("reason", "it was straw");
        assertEquals(200, site.send(undo, back).statusCode());
        assertFalse(site.get("/records").body().contains("sawdust</td>"));
        assertEquals("straw", site.form(site.get(mend(bedded)).body()).get("data.material"));
    }

    @Test
    void aPensEventIsWithdrawnWithAReason() {
        Map<String, String> form = site.form(site.get(mend(bedded)).body());
        form.put("action", "withdraw");
        form.put("reason", "another yard");
        assertEquals(200, site.send(mend(bedded), form).statusCode());
        String records = site.get("/records").body();
        assertFalse(records.contains("id=\"pens\""), records);
        assertTrue(site.get(mend(bedded)).body().contains("It was retracted"));
    }

    @Test
    void theFarmsSeasonsAreCorrectedAndCountAtOnce() {
        Map<String, String> form = site.form(site.get(mend(farm)).body());
        assertEquals("2025-26 from 2025-08-01 to 2026-08-01", form.get("data.seasons"));
        form.put("action", "correct");
        form.put("data.seasons", "autumn from 2025-08-01 to 2026-01-01; spring from 2026-01-01 to 2026-08-01");
        assertEquals(200, site.send(mend(farm), form).statusCode());
        assertTrue(site.get("/season").body().contains("<h1>Season spring"));
    }

    @Test
    void aSeasonThatCannotBeReadIsToldAndNothingIsRecorded() {
        Map<String, String> form = site.form(site.get(mend(farm)).body());
        form.put("action", "correct");
        form.put("data.seasons", "all year");
        long before = site.records().log().last();
        assertEquals(422, site.send(mend(farm), form).statusCode());
        assertEquals(before, site.records().log().last());
    }

    @Test
    void aCalfAskedForBeforeAnythingOfItWasRecordedIsNotFoundAndThePageSaysHowToSeeIt() {
        HttpResponse<String> before = site.get("/calves/A?as-of=2026-02-01");
        assertEquals(404, before.statusCode());
        assertTrue(before.body().contains("nothing was on record of A yet"), before.body());
        assertTrue(before.body().contains("Take as-of out of the address"), before.body());
        assertEquals(404, site.get("/calves/B?as-of=2026-02-01").statusCode());
        assertEquals(200, site.get("/calves/A?as-of=2026-03-01").statusCode());
    }
}
