package wisp.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import wisp.event.NavelChecked;

/** What a tick must never do: record twice, in another's name, on a past day or what cannot be. */
class DueTickSafetyTest extends OneCalfDue {
    @Test
    void aDoubleTapRecordsOnceAndLeadsToTheSamePlace() {
        born("2026-11-25T09:20:00Z", "female");
        Map<String, String> form = quick("navel-treated");
        HttpResponse<String> first = send(form);
        HttpResponse<String> second = send(form);
        assertEquals(303, second.statusCode());
        assertEquals(2, site.records().log().last());
        String page = follow(second);
        assertTrue(page.contains("<strong>Recorded:</strong> navel treated"), page);
        assertEquals(page, follow(second), "a reload changes nothing");
        assertEquals(2, site.records().log().last());
        assertTrue(first.headers().firstValue("location").orElseThrow().endsWith("#recorded"));
    }

    @Test
    void whatIsTakenBackCanBeTickedAgainButNotByTheOldPage() {
        born("2026-11-25T09:20:00Z", "female");
        Map<String, String> old = quick("navel-treated");
        String page = follow(send(old));
        String undo = find(page, "class=\"undo\" href=\"([^\"]*)\"").replace("&amp;", "&");
        Map<String, String> back = site.form(site.get(undo).body());
        back.put("reason", "another calf");
        back.put("action", "withdraw");
        assertEquals(200, site.send(undo, back).statusCode());
        assertTrue(listed("navel-treated"));
        assertEquals(409, send(old).statusCode());
        assertTrue(listed("navel-treated"));
        assertEquals(303, tap("navel-treated").statusCode());
        assertFalse(listed("navel-treated"));
    }

    @Test
    void twoPeopleWithOtherWordsAreNotTakenForOne() {
        born("2026-11-22T09:20:00Z", "female");
        Map<String, String> other = form("navel-look-early");
        tap("navel-look-early");
        other.put("data.finding", "painful");
        HttpResponse<String> refused = send(other);
        assertEquals(409, refused.statusCode());
        assertTrue(refused.body().contains("recorded meanwhile, with other words"), refused.body());
        assertEquals(1, data(NavelChecked.class).size());
    }

    @Test
    void aTimeBeforeTheBirthInTheFutureOrThatNeverWasIsRefused() {
        born("2026-11-25T09:20:00Z", "female");
        Map<String, String> form = form("navel-treated");
        form.put("data.product", "iodine <strong>");
        form.put("time", "2026-11-25T09:00");
        HttpResponse<String> refused = send(form);
        assertEquals(422, refused.statusCode());
        assertTrue(refused.body().contains("The calf was born on 25 Nov 2026 09:20."), refused.body());
        assertTrue(refused.body().contains("value=\"iodine &lt;strong>\""), refused.body());
        form.put("time", "2026-11-25T11:00");
        assertTrue(send(form).body().contains("It lies in the future."));
        form.put("time", "soon");
        assertTrue(send(form).body().contains("is not a day and an hour"));
        form.put("time", "");
        form.put("data.concentration_percent", "strong");
        assertTrue(send(form).body().contains("It must be a number, not \"strong\"."));
        assertEquals(1, site.records().log().last());
    }

    @Test
    void aFormOfAnotherOriginOrWithoutTheTokenRecordsNothing() {
        born("2026-11-25T09:20:00Z", "female");
        Map<String, String> form = quick("navel-treated");
        for (String origin : List.of("cross-site", "same-site")) {
            var request = site.post("/due", form).header("Sec-Fetch-Site", origin);
            assertEquals(403, site.send(request).statusCode());
        }
        var foreign = site.post("/due", form).header("Origin", "http://evil.example");
        assertEquals(403, site.send(foreign).statusCode());
        form.put("token", "0123456789abcdef0123456789abcdef");
        assertEquals(403, send(form).statusCode());
        assertEquals(1, site.records().log().last());
    }

    @Test
    void aPastDayHasNoTicks() {
        born("2026-11-22T09:20:00Z", "female");
        String past = site.get("/due?as-of=2026-11-24").body();
        assertTrue(past.contains("id=\"d-0-navel-look-early\""), past);
        assertFalse(past.contains("method=\"post\""), past);
        assertEquals(
                409,
                site.send("/due?as-of=2026-11-24", quick("navel-look-early")).statusCode());
        assertEquals(1, site.records().log().last());
    }

    @Test
    void theNameTypedOnceIsRecordedAndStays() {
        born("2026-11-25T09:20:00Z", "female");
        String address = "/due?worker=Ann+B&order=pen";
        String page = site.get(address).body();
        assertTrue(page.contains("action=\"/due?order=pen&amp;worker=Ann+B\""), page);
        HttpResponse<String> done = site.send(address, quick("navel-treated"));
        assertEquals("Ann B", last().recordedBy());
        String next = done.headers().firstValue("location").orElseThrow();
        assertTrue(next.startsWith("/due?"), next);
        assertTrue(next.contains("&order=pen&recorded=") && next.contains("&worker=Ann+B#"), next);
    }

    @Test
    void aStepThatNoCalfHasIsNotFound() {
        born("2026-11-25T09:20:00Z", "female");
        Map<String, String> form = quick("navel-treated");
        form.put("step", "moon");
        assertEquals(404, send(form).statusCode());
        form.put("calf", "nobody");
        assertEquals(404, send(form).statusCode());
    }
}
