package wisp.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class TagPagesTest {
    private final SmallSite site = new SmallSite();

    @AfterEach
    void stop() {
        site.close();
    }

    private void born(String key) {
        site.event("birth", key, "2026-03-01T07:30:00Z", "{\"alive\":true}");
    }

    private String tag(String key, String day, String number, String ear) {
        String data = "{\"number\":\"" + number + "\",\"ear\":\"" + ear + "\"}";
        return site.event("tag-fitted", key, "2026-03-" + day + "T09:00:00Z", data);
    }

    private String words(String path) {
        return site.get(path).body().replaceAll("<[^>]*>", " ").replaceAll("\\s+", " ");
    }

    private String find(String what) {
        return words("/calves?find=" + URLEncoder.encode(what, StandardCharsets.UTF_8));
    }

    @Test
    void aCalfIsCalledByItsKeyUntilItIsTaggedAndThenByItsTag() {
        born("calf-1");
        assertTrue(words("/calves/calf-1").contains("Calf calf-1 "), words("/calves/calf-1"));
        tag("calf-1", "02", "uk123450600001", "left");
        String page = words("/calves/calf-1");
        assertTrue(page.contains("Calf UK 123450 600001 key calf-1"), page);
        assertTrue(page.contains("tag fitted : UK 123450 600001, left"), page);
        assertTrue(words("/calves").contains("UK 123450 600001 calf-1"));
        assertTrue(site.get("/api/v1/calves/calf-1").body().contains("uk123450600001"), "recorded as it was written");
    }

    @Test
    void anyWritingOfAnyTagThatItEverHadFindsACalf() {
        born("calf-1");
        born("calf-2");
        tag("calf-1", "02", "UK 123450 600001", "left");
        tag("calf-1", "05", "UK 123450 700002", "left");
        List.of(
                        "UK 123450 600001",
                        "uk123450-600001",
                        "826123450600001",
                        "GB 123450 700002",
                        "00001",
                        "50 7",
                        "700002",
                        "CALF-1")
                .forEach(what -> assertTrue(find(what).contains("One calf with"), what + ": " + find(what)));
        assertTrue(find("calf-").contains("2 calves with"));
        assertTrue(find("UK 123450 600003").contains("No calf with"));
        assertTrue(find("-").contains("2 calves"), "keys hold a hyphen");
    }

    @Test
    void whatTheFiltersLeaveOutIsOffered() {
        born("calf-1");
        site.event("birth", "old-1", "2024-03-01T07:30:00Z", "{\"alive\":true}");
        String page = find("old-1");
        assertTrue(page.contains("No calf with"), page);
        assertTrue(page.contains("One more among all calves"), page);
        assertTrue(find("calf-1").contains("One calf"));
        assertFalse(find("calf-1").contains("among all calves"));
    }

    @Test
    void aWrongDigitIsListedWithWhatMayHaveBeenMeantAndTheMendFormOffersIt() {
        born("A");
        tag("A", "02", "UK 123450 600001", "left");
        String id = tag("A", "02", "UK 123450 600007", "right");
        String records = words("/records");
        assertTrue(records.contains("Tags to look at"), records);
        assertTrue(records.contains("check digit does not fit"), records);
        assertTrue(records.contains("two ears, two numbers"), records);
        assertTrue(records.contains("no event is marked"), "a warning is no mark: " + records);
        assertTrue(words("/calves/A").contains("Perhaps meant: UK 123450 600001"), words("/calves/A"));
        String form = site.get("/records/mend?source=test&id=" + id).body();
        assertTrue(form.contains("<option value=\"UK 123450 600001\">"), form);
        assertTrue(form.contains("list=\"o-number\""), form);
    }

    @Test
    void aLostTagCanBeNotedAndIsListedUntilItIsReplaced() {
        born("A");
        tag("A", "02", "UK 123450 600001", "left");
        site.event("noted", "A", "2026-03-09T09:00:00Z", "{\"text\":\"torn out\",\"tag_lost\":\"left\"}");
        assertTrue(words("/records").contains("lost tag not replaced"));
        assertTrue(words("/calves/A").contains("left tag lost"), words("/calves/A"));
        assertTrue(words("/calves/A").contains("left 2 Mar 2026 found lost 9 Mar 2026"), words("/calves/A"));
        tag("A", "20", "UK 123450 600001", "left");
        assertTrue(words("/calves/A").contains("left 2 Mar 2026 replaced 20 Mar 2026"), words("/calves/A"));
        assertTrue(words("/calves/A").contains("left 20 Mar 2026 in place"));
        assertFalse(words("/records").contains("lost tag not replaced"));
    }

    @Test
    void warningsRespectTheDayOfKnowledge() {
        born("A");
        tag("A", "05", "UK 123450 500001", "left");
        assertTrue(words("/records").contains("check digit"));
        assertFalse(words("/records?as-of=2026-03-03").contains("check digit"));
        assertEquals(
                -1, site.get("/records?as-of=2026-03-06").body().indexOf("Correct it<"), "a past day cannot be mended");
    }
}
