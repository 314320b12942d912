package wisp.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wisp.event.Amended;
import wisp.event.NavelTreated;
import wisp.event.Retracted;
import wisp.event.Weighed;
import wisp.history.Life;
import wisp.history.LifeEvent;
import wisp.log.StoredEvent;

/** The page that mends an event, over real HTTP: it writes corrections, and writes none that it should not. */
class MendingTest {
    private SmallSite site;

    @BeforeEach
    void serve() {
        site = new SmallSite();
        site.event("birth", "c", "2026-05-01T06:00:00+01:00", "{\"alive\":true,\"sex\":\"male\"}");
        site.event("weighed", "c", "2026-04-20T08:00:00+01:00", "{\"weight_kg\":40.5}");
        site.event("navel-treated", "c", "2026-05-01T06:10:00+01:00", "{\"product\":\"iodine\",\"method\":\"dip\"}");
    }

    @AfterEach
    void stop() {
        site.close();
    }

    @Test
    void theFormHoldsTheEventAsItIs() {
        Map<String, String> form = open("e3");
        assertEquals("iodine", form.get("data.product"));
        assertEquals("dip", form.get("data.method"));
        assertEquals("", form.get("data.concentration_percent"));
        assertEquals("2026-05-01T06:10:00", form.get("time"));
    }

    @Test
    void aMarkedEventIsCorrectedAndThenCounts() {
        assertEquals(1, life().marks().size());
        Map<String, String> form = open("e2");
        form.put("time", "2026-05-20T08:00");
        form.put("name", "Ann");
        HttpResponse<String> done = send("e2", form, "correct");
        assertEquals(200, done.statusCode());
        assertTrue(done.body().contains("Events marked in the whole log: 1 before, 0 now."), done.body());
        assertEquals(List.of(), life().marks());
        StoredEvent last = last();
        assertEquals("wisp:site", last.event().source());
        assertEquals("Ann", last.event().recordedBy());
        Amended amended = (Amended) last.event().data();
        assertEquals("2026-05-20T08:00+01:00", amended.time().toString());
        assertEquals("{\"weight_kg\":40.5}", amended.dataJson());
    }

    @Test
    void anEventIsWithdrawnWithAReasonAndComesBackWhenTheCorrectionIsWithdrawn() {
        Map<String, String> form = open("e3");
        form.put("reason", "another calf");
        HttpResponse<String> done = send("e3", form, "withdraw");
        assertEquals(200, done.statusCode());
        assertTrue(done.body().contains("The event no longer counts."), done.body());
        Retracted retracted = (Retracted) last().event().data();
        assertEquals("another calf", retracted.reason());
        assertFalse(treated());
        String correction = last().event().id();
        String page =
                site.get("/records/mend?source=wisp:site&id=" + correction).body();
        assertFalse(page.contains("value=\"correct\""), "a correction is not amended");
        Map<String, String> back = site.form(page);
        back.put("reason", "it was this calf");
        back.put("action", "withdraw");
        assertEquals(
                200,
                site.send("/records/mend?source=wisp:site&id=" + correction, back)
                        .statusCode());
        assertTrue(treated());
    }

    @Test
    void theSameFormSentTwiceIsOneCorrection() {
        Map<String, String> form = open("e2");
        form.put("time", "2026-05-20T08:00:00");
        send("e2", form, "correct");
        long sequence = site.records().log().last();
        HttpResponse<String> again = send("e2", form, "correct");
        assertEquals(200, again.statusCode());
        assertTrue(again.body().contains("Recorded already"), again.body());
        assertEquals(sequence, site.records().log().last());
        Map<String, String> withdrawal = open("e3");
        withdrawal.put("reason", "wrong calf");
        send("e3", withdrawal, "withdraw");
        assertTrue(send("e3", withdrawal, "withdraw").body().contains("Recorded already"));
        assertEquals(sequence + 1, site.records().log().last());
    }

    @Test
    void theSameFormWithOtherWordsIsRefusedOnceAndThenIsAnotherCorrection() {
        Map<String, String> form = open("e3");
        form.put("data.product", "chlorhexidine");
        send("e3", form, "correct");
        form.put("data.product", "iodine tincture");
        HttpResponse<String> refused = send("e3", form, "correct");
        assertEquals(422, refused.statusCode());
        assertTrue(refused.body().contains("This form was sent before, with other words"), refused.body());
        assertEquals(200, send("e3", site.form(refused.body()), "correct").statusCode());
        assertTrue(life().events().stream()
                .anyMatch(event -> event.data() instanceof NavelTreated navel
                        && navel.product().equals("iodine tincture")));
    }

    @Test
    void wrongInputIsToldAtItsFieldAndKept() {
        Map<String, String> form = open("e2");
        form.put("data.weight_kg", "heavy");
        form.put("time", "2027-01-01T08:00");
        form.put("reason", "misread <scale>");
        HttpResponse<String> refused = send("e2", form, "correct");
        assertEquals(422, refused.statusCode());
        assertTrue(refused.body().contains("It must be a number, not \"heavy\"."), refused.body());
        assertTrue(refused.body().contains("It lies in the future."), refused.body());
        assertTrue(refused.body().contains("value=\"heavy\""), refused.body());
        assertTrue(refused.body().contains("value=\"misread &lt;scale>\""), refused.body());
        assertEquals(3, site.records().log().last());
    }

    @Test
    void withdrawingAsksForAReason() {
        HttpResponse<String> refused = send("e3", open("e3"), "withdraw");
        assertEquals(422, refused.statusCode());
        assertTrue(refused.body().contains("Nobody would know why it was withdrawn."), refused.body());
        assertEquals(3, site.records().log().last());
    }

    @Test
    void anUnchangedEventIsNotCorrected() {
        HttpResponse<String> refused = send("e3", open("e3"), "correct");
        assertEquals(422, refused.statusCode());
        assertTrue(refused.body().contains("Nothing is changed."), refused.body());
    }

    @Test
    void anHourThatTheClocksSkippedIsRefused() {
        Map<String, String> form = open("e2");
        form.put("time", "2026-03-29T01:30");
        assertTrue(send("e2", form, "correct").body().contains("there was no such time"));
        assertEquals(3, site.records().log().last());
    }

    @Test
    void ofTwoEqualHoursTheSecondCanBeMeant() {
        Map<String, String> form = open("e2");
        form.put("time", "2026-10-25T01:30");
        form.put("later", "on");
        send("e2", form, "correct");
        assertEquals(
                "2026-10-25T01:30Z", ((Amended) last().event().data()).time().toString());
    }

    @Test
    void onlyTheDayMayBeKnown() {
        Map<String, String> form = open("e2");
        form.put("time", "2026-05-20T08:00");
        form.put("day_only", "on");
        send("e2", form, "correct");
        LifeEvent weighed = life().events().stream()
                .filter(event -> event.data() instanceof Weighed)
                .findFirst()
                .orElseThrow();
        assertFalse(weighed.timeKnown());
        assertEquals("2026-05-19T23:00:00Z", weighed.time().toString());
    }

    @Test
    void whatAnotherCorrectedMeanwhileIsNotOverwritten() {
        Map<String, String> mine = open("e3");
        Map<String, String> other = open("e3");
        other.put("data.product", "chlorhexidine");
        send("e3", other, "correct");
        mine.put("data.product", "none");
        HttpResponse<String> refused = send("e3", mine, "correct");
        assertEquals(422, refused.statusCode());
        assertTrue(refused.body().contains("Somebody corrected this event after you had opened it"), refused.body());
    }

    @Test
    void aFormOfAnotherOriginIsRefused() {
        Map<String, String> form = open("e3");
        form.put("reason", "attack");
        form.put("action", "withdraw");
        assertEquals(
                403,
                site.send(site.post(path("e3"), form).header("Sec-Fetch-Site", "cross-site"))
                        .statusCode());
        assertEquals(
                403,
                site.send(site.post(path("e3"), form).header("Sec-Fetch-Site", "same-site"))
                        .statusCode());
        assertEquals(
                403,
                site.send(site.post(path("e3"), form).header("Origin", "http://evil.example"))
                        .statusCode());
        assertEquals(
                403,
                site.send(site.post(path("e3"), form).header("Origin", "null")).statusCode());
        assertEquals(3, site.records().log().last());
    }

    @Test
    void aFormWithoutThisServersTokenIsRefusedAndWhatWasTypedIsKept() {
        Map<String, String> form = open("e3");
        form.put("reason", "typed with care");
        form.put("token", "0123456789abcdef0123456789abcdef");
        HttpResponse<String> refused = send("e3", form, "withdraw");
        assertEquals(403, refused.statusCode());
        assertTrue(refused.body().contains("typed with care"), refused.body());
        assertEquals(3, site.records().log().last());
        assertEquals(200, send("e3", site.form(refused.body()), "withdraw").statusCode());
    }

    @Test
    void aPastDayCannotBeMended() {
        Map<String, String> form = open("e3");
        form.put("reason", "too late");
        form.put("action", "withdraw");
        assertEquals(409, site.send(path("e3") + "&as-of=2026-06-01", form).statusCode());
        assertEquals(409, site.get(path("e3") + "&as-of=2026-06-01").statusCode());
        assertEquals(3, site.records().log().last());
        assertTrue(site.get("/calves/c").body().contains("/records/mend?"));
        assertFalse(site.get("/calves/c?as-of=2026-06-01").body().contains("/records/mend?"));
        assertFalse(site.get("/records?as-of=2026-06-01").body().contains("/records/mend?"));
    }

    @Test
    void anEventThatIsNotThereIsNotFound() {
        assertEquals(404, site.get("/records/mend?source=test&id=e9").statusCode());
        assertEquals(404, site.get("/records/mend").statusCode());
    }

    @Test
    void aCorrectedBirthTellsWhichFiguresItChanged() {
        Map<String, String> form = open("e1");
        form.put("data.alive", "false");
        HttpResponse<String> done = send("e1", form, "correct");
        assertEquals(200, done.statusCode());
        assertEquals(List.of("pending", "counted"), beforeAndNow(done.body(), "Stillbirth"));
    }

    /** What the page of a mended event says of one figure. */
    private static List<String> beforeAndNow(String page, String figure) {
        Matcher row = Pattern.compile(">" + figure + "</a></th><td[^>]*>([^<]*)</td><td[^>]*>([^<]*)</td>")
                .matcher(page);
        assertTrue(row.find(), page);
        return List.of(row.group(1), row.group(2));
    }

    private Map<String, String> open(String id) {
        HttpResponse<String> page = site.get(path(id));
        assertEquals(200, page.statusCode(), page.body());
        return site.form(page.body());
    }

    private HttpResponse<String> send(String id, Map<String, String> form, String action) {
        Map<String, String> all = new LinkedHashMap<>(form);
        all.put("action", action);
        return site.send(path(id), all);
    }

    private static String path(String id) {
        return "/records/mend?source=test&id=" + id;
    }

    private StoredEvent last() {
        long last = site.records().log().last();
        return site.records().log().read(last - 1, 1).get(0);
    }

    private Life life() {
        return site.records().cohort().lives().get(0);
    }

    private boolean treated() {
        return life().events().stream().anyMatch(event -> event.data() instanceof NavelTreated);
    }
}
