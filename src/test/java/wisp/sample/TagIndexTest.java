package wisp.sample;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import wisp.cohort.Cohort;
import wisp.cohort.Herd;
import wisp.history.Life;
import wisp.testing.Events;

class TagIndexTest {
    private static final String RESULT = "2026-03-20 00:00";

    private final Events events = Events.london();

    private Cohort cohort() {
        Herd herd = Herd.following();
        herd.apply(events.all());
        return herd.cohort();
    }

    private List<String> find(String number) {
        return keys(new TagIndex(cohort()).find(number, events.instant(RESULT)));
    }

    private List<String> likely(String number) {
        return keys(new TagIndex(cohort()).likely(number, events.instant(RESULT)));
    }

    private static List<String> keys(List<Life> lives) {
        return lives.stream().map(Life::key).toList();
    }

    private void calf(String key, String birth, String number) {
        events.add("birth", key, birth, "alive: true");
        events.add("tag-fitted", key, birth.substring(0, 10) + " 12:00", "number: " + number + ", ear: left");
    }

    @Test
    void aCalfIsFoundByAnyTagItEverHadAndByItsSamplesNumber() {
        calf("A", "2026-03-01 07:30", "UK 123450 600001");
        events.add("tag-fitted", "A", "2026-03-05 12:00", "number: UK 123450 700002, ear: left");
        events.add("tissue-sampled", "A", "2026-03-06 12:00", "tag_number: S 77");
        assertEquals(List.of("A"), find("uk123450-600001"));
        assertEquals(List.of("A"), find("826123450700002"));
        assertEquals(List.of("A"), find("s77"));
        assertEquals(List.of("A"), find("A"), "its own key");
        assertEquals(List.of(), find("UK 123450 100003"));
    }

    @Test
    void aNumberThatTwoHaveHadNamesBoth() {
        calf("A", "2026-03-01 07:30", "UK 123450 600001");
        events.add("died", "A", "2026-03-03 12:00", "");
        calf("B", "2026-03-10 07:30", "UK 123450 600001");
        assertEquals(List.of("A", "B"), find("UK 123450 600001"));
    }

    @Test
    void whoeverWasBornAfterTheResultIsNotMeant() {
        calf("A", "2026-03-01 07:30", "UK 123450 600001");
        events.add("died", "A", "2026-03-03 12:00", "");
        calf("B", "2026-03-21 00:30", "UK 123450 600001");
        assertEquals(List.of("A"), find("UK 123450 600001"));
        calf("C", "2026-03-20 23:30", "UK 123450 700002");
        assertEquals(List.of("C"), find("UK 123450 700002"), "of a result without its hour, that day counts");
    }

    @Test
    void aFittingThatIsMarkedBecauseAnotherHasTheNumberMakesItAmbiguous() {
        calf("A", "2026-03-01 07:30", "UK 123450 600001");
        calf("B", "2026-03-02 07:30", "UK 123450 600001");
        assertEquals(List.of("A", "B"), find("UK 123450 600001"));
        List<UnmatchedSample> unmatched = withStray("uk 123450 600001");
        assertEquals(2, unmatched.get(0).having());
        assertEquals(List.of("A", "B"), keys(unmatched.get(0).likely()));
    }

    @Test
    void aKeyThatIsAnOfficialNumberIsOneWhateverItsWriting() {
        events.add("birth", "UK123450600001", "2026-03-01 07:30", "alive: true");
        assertEquals(List.of("UK123450600001"), find("UK 123450 600001"));
    }

    @Test
    void theLikelyOnesComeNearestFirstAndTheLivingBeforeTheGone() {
        calf("A", "2026-03-01 07:30", "UK 123450 600001");
        calf("B", "2026-03-01 07:30", "UK 123450 700002");
        calf("C", "2026-03-01 07:30", "UK 123450 700012");
        events.add("died", "B", "2026-03-03 12:00", "");
        assertEquals(List.of("A"), likely("123450600001"));
        assertEquals(List.of("C", "B"), likely("UK 123450 700092"));
        assertEquals(List.of("C", "B"), likely("UK 123450 700022"));
        assertEquals(List.of(), likely("nothing like it"));
    }

    @Test
    void whatMatchesNobodyIsListedAndIsNobodysNumberItself() {
        calf("A", "2026-03-01 07:30", "UK 123450 600001");
        List<UnmatchedSample> unmatched = withStray("UK 123450 600007");
        assertEquals(1, unmatched.size());
        assertEquals("UK 123450 600007", unmatched.get(0).number());
        assertEquals(List.of("A"), keys(unmatched.get(0).likely()));
        assertEquals(List.of(), find("UK 123450 600007"), "a second row of that number is unmatched too");
    }

    @Test
    void aTagThatIsFittedAfterwardsIsTheLikeliest() {
        calf("A", "2026-03-01 07:30", "UK 123450 600001");
        events.add("birth", "B", "2026-03-01 07:30", "alive: true");
        assertEquals(0, withStray("UK 123450 600002").get(0).having());
        events.add("tag-fitted", "B", "2026-03-30 12:00", "number: uk123450600002");
        Cohort now = cohort();
        UnmatchedSample stray = UnmatchedSample.of(now, new TagIndex(now)).get(0);
        assertEquals(1, stray.having());
        assertEquals("B", stray.likely().get(0).key());
    }

    private List<UnmatchedSample> withStray(String number) {
        events.add("sample-result", number, "2026-03-20", "result: negative");
        Cohort cohort = cohort();
        return UnmatchedSample.of(cohort, new TagIndex(cohort));
    }
}
