package wisp.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import wisp.event.Castrated;
import wisp.event.ColostrumFed;
import wisp.event.NavelChecked;
import wisp.event.TagFitted;

/** Every kind of step ticked off the list of what is due. */
class DueTicksTest extends OneCalfDue {
    @Test
    void aNavelIsTickedOffWithOneTap() {
        born("2026-11-25T09:20:00Z", "female");
        ticksOff("navel-treated", Map.of());
        assertEquals("2026-11-25T10:00:00Z", last().time().toString());
        assertEquals("wisp:due", last().source());
    }

    @Test
    void aLookAtTheNavelIsNormalByOneTapAndElseByItsForm() {
        born("2026-11-22T09:20:00Z", "female");
        assertEquals(Map.of("finding", "normal"), preset("navel-look-early"));
        ticksOff("navel-look-early", Map.of("data.finding", "painful"));
        assertEquals(NavelChecked.Finding.PAINFUL, ((NavelChecked) last().data()).finding());
    }

    @Test
    void aFeedingOfWhatIsMissingTicksOffBothAmounts() {
        site.event("birth", "c", "2026-11-25T09:20:00Z", "{\"alive\":true,\"sex\":\"female\",\"weight_kg\":41}");
        site.event("colostrum-fed", "c", "2026-11-25T09:30:00Z", "{\"volume_l\":2}");
        assertEquals(Map.of("volume_l", "2.1"), preset("colostrum-first"));
        int before = count();
        assertEquals(303, tap("colostrum-first").statusCode());
        assertEquals(before - 2, count());
        assertEquals(2.1, ((ColostrumFed) last().data()).volumeL());
    }

    @Test
    void theSecondAmountOfColostrumAloneIsTickedOff() {
        born("2026-11-25T07:20:00Z", "female");
        Map<String, String> form = form("colostrum-total");
        form.put("data.volume_l", "3.5");
        form.put("data.method", "tube");
        form.put("time", "2026-11-25T09:00");
        send(form);
        assertFalse(listed("colostrum-total"));
        assertEquals("2026-11-25T09:00:00Z", last().time().toString());
    }

    @Test
    void bothTagsOfOneNumberAreOneTick() {
        born("2026-11-24T20:20:00Z", "female");
        assertEquals(Map.of(), preset("first-tag"));
        int before = count();
        Map<String, String> form = form("first-tag");
        form.put("data.number", "UK 123456 100078");
        form.put("data.ear", "left");
        HttpResponse<String> done = send(form);
        assertEquals(303, done.statusCode());
        List<TagFitted> tags = data(TagFitted.class);
        assertEquals(2, tags.size());
        assertEquals(TagFitted.Ear.RIGHT, tags.get(1).ear());
        assertEquals(TagFitted.Role.SECONDARY, tags.get(1).role());
        assertEquals(before - 1, count(), "the pair's limit is not near yet and was not in the list");
        assertEquals(303, send(form).statusCode());
        assertEquals(2, data(TagFitted.class).size());
        assertTrue(follow(done).contains("tag fitted, UK 123456 100078"), follow(done));
    }

    @Test
    void theSecondTagComesFilledInWithTheFirstOnesNumber() {
        born("2026-11-06T20:20:00Z", "female");
        site.event(
                "tag-fitted",
                "c",
                "2026-11-07T08:00:00Z",
                "{\"number\":\"UK 123456 100078\",\"ear\":\"left\",\"role\":\"primary\"}");
        Map<String, String> form = form("both-tags");
        assertEquals("UK 123456 100078", form.get("data.number"));
        assertEquals("right", form.get("data.ear"));
        assertEquals("secondary", form.get("data.role"));
        ticksOff("both-tags", Map.of());
    }

    @Test
    void aTagWithoutItsEarOrNumberComesBackWithWhatWasTyped() {
        born("2026-11-24T20:20:00Z", "female");
        Map<String, String> form = form("first-tag");
        form.put("data.number", "UK 123456 100078");
        HttpResponse<String> refused = send(form);
        assertEquals(422, refused.statusCode());
        assertTrue(refused.body().contains("an ear must be named"), refused.body());
        assertTrue(refused.body().contains("value=\"UK 123456 100078\""), refused.body());
        form.put("data.number", "");
        assertTrue(send(form).body().contains("It is missing."));
        assertEquals(List.of(), data(TagFitted.class));
    }

    @Test
    void aNumberThatLooksWrongIsAskedForOnceMore() {
        born("2026-11-24T20:20:00Z", "female");
        Map<String, String> form = form("first-tag");
        form.put("data.number", "UK 123456 200078");
        form.put("data.ear", "left");
        HttpResponse<String> refused = send(form);
        assertEquals(422, refused.statusCode());
        assertTrue(refused.body().contains("Look at the tag again"), refused.body());
        Map<String, String> again = formOf(refused.body(), "first-tag");
        again.put("sure", "on");
        assertEquals(303, send(again).statusCode());
        assertEquals(2, data(TagFitted.class).size());
    }

    @Test
    void aNumberOfAnotherLivingAnimalIsRefused() {
        born("2026-11-24T20:20:00Z", "female");
        site.event("birth", "d", "2026-01-01T20:20:00Z", "{\"alive\":true,\"sex\":\"female\"}");
        site.event("tag-fitted", "d", "2026-01-01T21:00:00Z", "{\"number\":\"UK123456100078\"}");
        Map<String, String> form = form("first-tag");
        form.put("data.number", "UK 123456 100078");
        form.put("data.ear", "left");
        assertTrue(send(form).body().contains("Another living animal has this number: d."));
    }

    @Test
    void aRingIsOneTapWhileTheLawLetsItBe() {
        born("2026-11-19T09:20:00Z", "male");
        assertEquals(Map.of("method", "ring", "both_in", "true"), preset("castrate"));
        ticksOff("castrate", null);
        assertEquals(Castrated.Method.RING, ((Castrated) last().data()).method());
    }

    @Test
    void aRingAfterItsDayCannotBeTickedAndTheFormNamesTheLawfulWays() {
        born("2026-11-10T09:20:00Z", "male");
        assertEquals(Map.of(), preset("castrate"));
        String item = item(page(), "castrate");
        assertTrue(item.contains("Still lawful: clamp, surgical; a vet may be needed."), item);
        assertTrue(item.contains("Clamp: no anaesthetic or vet is asked by law yet"), item);
        Map<String, String> form = form("castrate");
        form.put("data.method", "ring");
        HttpResponse<String> refused = send(form);
        assertEquals(422, refused.statusCode());
        assertTrue(refused.body().contains("does not allow ring after 17 Nov 2026"), refused.body());
        assertTrue(refused.body().contains("Lawful that day: clamp, surgical."), refused.body());
        form.put("data.method", "clamp");
        ticksOff("castrate", form);
    }

    @Test
    void aRingPutOnInTimeAndWrittenDownLateIsTaken() {
        born("2026-11-10T09:20:00Z", "male");
        ticksOff("castrate", Map.of("data.method", "ring", "data.both_in", "true", "time", "2026-11-17T08:00"));
    }

    @Test
    void anAnaestheticThatTheLawAsksForMustBeNamed() {
        born("2026-08-10T09:20:00Z", "male");
        Map<String, String> form = form("castrate");
        form.put("data.method", "surgical");
        assertTrue(send(form).body().contains("asks for an anaesthetic with this method at this age"));
        form.put("data.anaesthetic", "false");
        assertEquals(422, send(form).statusCode());
        form.put("data.anaesthetic", "procaine");
        ticksOff("castrate", form);
    }

    @Test
    void aCastrationNotSeenThroughIsTickedOffByTheNextOne() {
        born("2026-11-10T09:20:00Z", "male");
        site.event("castrated", "c", "2026-11-12T08:00:00Z", "{\"method\":\"ring\",\"both_in\":false}");
        ticksOff("castration-look", Map.of("data.method", "clamp", "data.both_in", "true"));
    }

    @Test
    void registrationIsTickedOff() {
        born("2026-11-01T09:20:00Z", "female");
        ticksOff("register", Map.of("data.document", "P 1"));
    }

    @Test
    void bloodIsTickedOffByItsReadingAlone() {
        born("2026-11-20T09:20:00Z", "female");
        Map<String, String> form = form("blood-sample");
        assertTrue(send(form).body().contains("No result is given."));
        form.put("data.serum_brix_percent", "8,9");
        ticksOff("blood-sample", form);
    }

    @Test
    void disbuddingAsksForItsMethodAndAnaesthetic() {
        born("2026-09-28T09:20:00Z", "female");
        assertTrue(send(form("disbudding")).body().contains("It is missing."));
        ticksOff("disbudding", Map.of("data.method", "cautery", "data.anaesthetic", "procaine"));
    }

    @Test
    void aSampleIsTickedOff() {
        site.event(
                "farm-described",
                "farm",
                "2026-01-01T00:00:00Z",
                "{\"name\":\"f\",\"zone\":\"Europe/Dublin\",\"jurisdiction\":\"ireland\",\"enterprise\":\"dairy\"}");
        born("2026-11-07T09:20:00Z", "female");
        ticksOff("tissue-sample", Map.of("data.tag_number", "S 1"));
    }

    @Test
    void aSampleGoesFromSentToItsResultAndAgainWhereThatWasInconclusive() {
        born("2026-11-07T09:20:00Z", "female");
        site.event("tissue-sampled", "c", "2026-11-20T09:20:00Z", "{}");
        ticksOff("sample-sent", null, 0);
        assertTrue(listed("sample-result"));
        assertTrue(send(form("sample-result")).body().contains("It is missing."));
        ticksOff("sample-result", Map.of("data.result", "inconclusive"), 0);
        ticksOff("sample-again", Map.of(), 0);
        assertTrue(listed("sample-sent"));
    }
}
