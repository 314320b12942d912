package wisp.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.http.HttpResponse;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class SamplesPageTest {
    private static final String ALERT = "A tissue sample is not negative";

    private final SmallSite site = new SmallSite();

    @AfterEach
    void stop() {
        site.close();
    }

    private void calf(String key, String number) {
        site.event("birth", key, "2026-11-01T07:30:00Z", "{\"alive\":true,\"dam\":\"cow 7\"}");
        site.event("tag-fitted", key, "2026-11-02T09:00:00Z", "{\"number\":\"" + number + "\",\"ear\":\"left\"}");
        site.event("tissue-sampled", key, "2026-11-02T09:01:00Z", "{\"tag_number\":\"" + number + "\"}");
    }

    private String result(String subject, String result) {
        return site.event("sample-result", subject, "2026-11-20T09:00:00Z", "{\"result\":\"" + result + "\"}");
    }

    private String words(String path) {
        return words(site.get(path));
    }

    private static String words(HttpResponse<String> page) {
        return Wire.spaced(page.body()).replaceAll("<[^>]*>", " ").replaceAll("\\s+", " ");
    }

    @Test
    void whatWaitsIsListedWithItsDays() {
        calf("A", "UK 123450 600001");
        calf("B", "UK 123450 700002");
        site.event("sample-sent", "B", "2026-11-04T09:00:00Z", "{\"laboratory\":\"north\"}");
        String page = words("/samples");
        assertTrue(page.contains("2 samples are waited for, the longest 2 days, counted to 4 Nov 2026."), page);
        assertTrue(page.contains("taken, not sent"), page);
        assertTrue(page.contains("at the laboratory"), page);
        assertFalse(page.contains("not negative"), page);
        result("B", "negative");
        assertTrue(
                words("/samples").contains("One sample is waited for, the longest 18 days, counted to 20 Nov 2026."));
    }

    @Test
    void theSampleOfADeadCalfIsNotWaitedFor() {
        calf("A", "UK 123450 600001");
        calf("B", "UK 123450 700002");
        site.event("died", "A", "2026-11-10T09:00:00Z", "{}");
        String page = words("/samples");
        assertTrue(page.contains("One sample is waited for, the longest 8 days, counted to 10 Nov 2026."), page);
        String ended = "not answered; the calf died on 10 Nov 2026";
        assertTrue(page.contains("Never answered") && page.contains(ended), page);
        assertTrue(words("/calves/A").contains(ended));
        assertTrue(words("/calves/B").contains("8 days"), "one clock for both pages");
        assertTrue(words("/samples?as-of=2026-11-09").contains("2 samples are waited for"), "both wait then");
    }

    @Test
    void aPositiveStandsOnEveryPageUntilALaterNegative() {
        calf("A", "UK 123450 600001");
        String id = result("A", "positive");
        List<String> paths = List.of(
                "/",
                "/navels",
                "/pens",
                "/calves",
                "/calves/A",
                "/medicines",
                "/samples",
                "/records",
                "/figures/stillbirth",
                "/season/weeks",
                "/records/mend?source=test&id=" + id);
        for (String path : paths) {
            String body = site.get(path).body();
            assertTrue(body.contains("role=\"alert\""), path);
            assertTrue(body.contains("href=\"/calves/A#samples\""), path);
            String page = words(path);
            assertTrue(page.contains(ALERT), path);
            assertTrue(page.contains("UK 123450 600001 (A) : positive"), path + page);
            assertTrue(page.contains("dam cow 7"), path);
            assertTrue(page.contains("Local law and the vet decide"), path);
        }
        for (String path : List.of("/calves/nobody", "/nothing", "/?season=never", "/due?pen=x&pen=y")) {
            String error = site.get(path).body();
            assertTrue(error.contains("role=\"alert\"") && error.contains(ALERT), path + error);
        }
        assertFalse(words("/?as-of=2026-11-19").contains(ALERT), "not known then");
        site.event("sample-result", "A", "2026-11-24T09:00:00Z", "{\"result\":\"negative\"}");
        assertFalse(words("/").contains(ALERT));
        assertFalse(site.get("/calves/nobody").body().contains(ALERT));
        assertTrue(words("/?as-of=2026-11-22").contains(ALERT), "known then");
    }

    @Test
    void aPositiveOfNobodyIsGivenToItsCalfAndCanBeTakenBack() {
        calf("A", "UK 123450 600001");
        site.event(
                "sample-result",
                "UK 123450 600007",
                "2026-11-20T00:00:00Z",
                "{\"result\":\"positive\",\"test\":\"antigen\",\"tag_number\":\"UK 123450 600007\",\"time_known\":false}");
        String page = words("/samples");
        assertTrue(page.contains("no calf found, tag number UK 123450 600007"), page);
        assertTrue(page.contains("One row of the laboratory matches no calf."), page);
        assertTrue(page.contains("It is of UK 123450 600001 (A)"), page);
        Map<String, String> form = site.form(site.get("/samples").body());
        form.put("calf", "A");
        form.remove("other");
        for (int twice = 0; twice < 2; twice++) {
            HttpResponse<String> sent = site.send("/samples/match", form);
            assertEquals(303, sent.statusCode(), sent.body());
            assertEquals(
                    "/samples?matched=A", sent.headers().firstValue("Location").orElse(""));
        }
        String after = words("/samples?matched=A");
        assertTrue(after.contains("Written for calf UK 123450 600001 (A)"), after);
        assertFalse(after.contains("matches no calf"), after);
        assertTrue(after.contains("UK 123450 600001 (A) : positive"), after);
        String json = site.get("/api/v1/calves/A").body();
        assertTrue(json.contains("\"state\":\"positive\""), json);
        assertTrue(json.contains("UK 123450 600007"), "the number as it was written: " + json);
        assertTrue(json.contains("\"time_known\":false"), json);
        assertEquals(4 + 2, site.records().log().last(), "two events more, and not twice");
    }

    @Test
    void anotherCalfCanBeNamedByKeyOrTagAndAWrongOneIsSaid() {
        calf("A", "UK 123450 600001");
        result("lab 99", "negative");
        Map<String, String> form = site.form(site.get("/samples").body());
        form.put("other", "UK 999999 100000");
        HttpResponse<String> wrong = site.send("/samples/match", form);
        assertEquals(422, wrong.statusCode());
        assertTrue(words(wrong).contains("No calf of that day has the key or tag number"), words(wrong));
        form.put("other", "");
        assertTrue(words(site.send("/samples/match", form)).contains("Nothing says whose it is."));
        form.put("other", "uk123450-600001");
        assertEquals(303, site.send("/samples/match", form).statusCode());
        form.put("form", "00000000-0000-0000-0000-000000000000");
        HttpResponse<String> late = site.send("/samples/match", form);
        assertEquals(422, late.statusCode());
        assertTrue(words(late).contains("matched or withdrawn already"), words(late));
    }

    @Test
    void aFormOfAnotherSiteOrWithoutTheTokenRecordsNothing() {
        calf("A", "UK 123450 600001");
        result("lab 99", "negative");
        long before = site.records().log().last();
        Map<String, String> form = site.form(site.get("/samples").body());
        form.put("calf", "A");
        HttpResponse<String> foreign =
                site.send(site.post("/samples/match", form).header("Sec-Fetch-Site", "cross-site"));
        assertEquals(403, foreign.statusCode());
        form.put("token", "guessed");
        assertEquals(403, site.send("/samples/match", form).statusCode());
        assertEquals(before, site.records().log().last());
        assertEquals(409, site.send("/samples/match?as-of=2026-11-22", form).statusCode());
    }

    @Test
    void theListComesAsCsvWithWhatMatchesNobody() {
        calf("A", "uk123450600001");
        result("lab 99", "inconclusive");
        String csv = site.get("/samples.csv").body();
        assertEquals(
                List.of(
                        "calf,tag,tag_number,taken,sent,result_time,result,laboratory,test,state,days_waiting",
                        "A,UK 123450 600001,uk123450600001,2026-11-02T09:01:00Z,,,,,,\"taken, not sent\",18",
                        ",,lab 99,,,2026-11-20T09:00:00Z,inconclusive,,,unmatched,"),
                csv.lines().toList());
    }
}
