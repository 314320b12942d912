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
import wisp.event.Castrated;
import wisp.event.ColostrumFed;
import wisp.event.EventData;
import wisp.event.NavelChecked;
import wisp.event.TagFitted;
import wisp.history.Life;
import wisp.history.LifeEvent;

/** Ticks on the list of what is due, over real HTTP; the clock stands at 10:00 on 25 November 2026. */
class DueTicksTest {
    private SmallSite site;

    @BeforeEach
    void serve() {
        site = new SmallSite();
    }

    @AfterEach
    void stop() {
        site.close();
    }

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

    private void born(String time, String sex) {
        site.event("birth", "c", time, "{\"alive\":true,\"sex\":\"" + sex + "\",\"pen\":\"barn\"}");
    }

    /** Sends an item's form, or taps it where nothing is said, and sees that item alone gone. */
    private void ticksOff(String step, Map<String, String> changes) {
        ticksOff(step, changes, 1);
    }

    private void ticksOff(String step, Map<String, String> changes, int fewer) {
        int before = count();
        Map<String, String> form = changes == null ? quick(step) : form(step);
        if (changes != null) {
            form.putAll(changes);
        }
        HttpResponse<String> done = send(form);
        assertEquals(303, done.statusCode(), done.body());
        assertFalse(listed(step));
        assertEquals(before - fewer, count());
    }

    private String page() {
        return site.get("/due").body();
    }

    private int count() {
        return page().split("<li class=\"due ", -1).length - 1;
    }

    private boolean listed(String step) {
        return page().contains("id=\"d-0-" + step + "\"");
    }

    private static String item(String page, String step) {
        int from = page.indexOf("id=\"d-0-" + step + "\"");
        assertTrue(from > 0, () -> step + " is not in " + page);
        return page.substring(from, page.indexOf("</li>\n", page.indexOf("</details>", from)));
    }

    /** What an item's button records beside the hour; empty where it has none. */
    private Map<String, String> preset(String step) {
        String item = item(page(), step);
        Map<String, String> preset = new LinkedHashMap<>();
        int button = item.indexOf("<form class=\"tick\"");
        if (button >= 0) {
            fields(item.substring(button, item.indexOf("</form>", button))).forEach((name, value) -> {
                if (name.startsWith("data.")) {
                    preset.put(name.substring(5), value);
                }
            });
        }
        return preset;
    }

    private Map<String, String> quick(String step) {
        String item = item(page(), step);
        int button = item.indexOf("<form class=\"tick\"");
        return fields(item.substring(button, item.indexOf("</form>", button)));
    }

    private Map<String, String> form(String step) {
        return formOf(page(), step);
    }

    private Map<String, String> formOf(String page, String step) {
        return site.form(item(page, step));
    }

    private static Map<String, String> fields(String form) {
        Map<String, String> fields = new LinkedHashMap<>();
        Matcher input = Pattern.compile("name=\"([^\"]*)\" value=\"([^\"]*)\"").matcher(form);
        while (input.find()) {
            fields.put(input.group(1), input.group(2));
        }
        return fields;
    }

    private HttpResponse<String> tap(String step) {
        return send(quick(step));
    }

    private HttpResponse<String> send(Map<String, String> form) {
        return site.send("/due", form);
    }

    private String follow(HttpResponse<String> sent) {
        return site.get(sent.headers().firstValue("location").orElseThrow().replaceAll("#.*", ""))
                .body();
    }

    private static String find(String text, String pattern) {
        Matcher found = Pattern.compile(pattern).matcher(text);
        assertTrue(found.find(), text);
        return found.group(1);
    }

    private Life life() {
        return site.records().cohort().lives().stream()
                .filter(life -> life.key().equals("c"))
                .findFirst()
                .orElseThrow();
    }

    private LifeEvent last() {
        return life().events().stream()
                .filter(event -> event.source().equals("wisp:due"))
                .reduce((one, other) -> other)
                .orElseThrow();
    }

    private <T extends EventData> List<T> data(Class<T> type) {
        return life().events().stream()
                .map(LifeEvent::data)
                .filter(type::isInstance)
                .map(type::cast)
                .toList();
    }
}
