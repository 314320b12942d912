package wisp.sample;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import org.junit.jupiter.api.Test;
import wisp.cohort.Cohort;
import wisp.cohort.Herd;
import wisp.testing.Events;

class StandingAlertTest {
    private final Events events = Events.london();

    private Cohort cohort() {
        Herd herd = Herd.following();
        herd.apply(events.all());
        return herd.cohort();
    }

    private List<String> alerts() {
        return keys(cohort());
    }

    private static List<String> keys(Cohort cohort) {
        return StandingAlert.of(cohort).stream().map(one -> one.life().key()).toList();
    }

    private void positive(String key) {
        events.add("birth", key, "2026-03-01 07:30", "alive: true");
        events.add("sample-result", key, "2026-03-09 09:00", "result: positive");
    }

    @Test
    void aPositiveStandsUntilALaterNegative() {
        positive("A");
        assertEquals(List.of("A"), alerts());
        events.add("sample-result", "A", "2026-03-30 09:00", "result: negative");
        assertEquals(List.of(), alerts());
    }

    @Test
    void aPositiveStandsUntilTheCalfIsGone() {
        positive("A");
        positive("B");
        events.add("died", "A", "2026-03-10 09:00", "");
        events.add("left", "B", "2026-03-10 09:00", "reason: sold");
        assertEquals(List.of(), alerts());
    }

    @Test
    void twoWritingsOfANumberThatIsNobodysAreOneAlert() {
        events.add("sample-result", "UK 123450 600007", "2026-03-09 09:00", "result: inconclusive");
        events.add("sample-result", "uk123450600007", "2026-03-10 09:00", "result: positive");
        events.add("sample-result", "UK 123450 700008", "2026-03-11 09:00", "result: inconclusive");
        assertEquals(List.of("uk123450600007", "UK 123450 700008"), alerts());
    }

    @Test
    void positiveOnesStandBeforeInconclusiveOnes() {
        positive("A");
        events.add("birth", "B", "2026-03-01 07:30", "alive: true");
        events.add("sample-result", "B", "2026-03-20 09:00", "result: inconclusive");
        assertEquals(List.of("A", "B"), alerts());
        assertFalse(StandingAlert.of(cohort()).get(1).positive());
    }

    @Test
    void aResultThatMatchesNobodyStandsUntilItIsWithdrawn() {
        var stray = events.add("sample-result", "UK 123450 600001", "2026-03-09 09:00", "result: positive");
        assertEquals(List.of("UK 123450 600001"), alerts());
        assertFalse(StandingAlert.of(cohort()).get(0).matched());
        events.retract(stray, "2026-03-10 09:00");
        assertEquals(List.of(), alerts());
    }

    @Test
    void aBoughtCalfWithoutARecordedBirthStandsUntilItHasLeft() {
        events.add("sample-result", "bought", "2026-03-09 09:00", "result: positive");
        assertEquals(List.of("bought"), alerts());
        events.add("left", "bought", "2026-03-12 09:00", "reason: sold");
        assertEquals(List.of(), alerts());
    }

    @Test
    void aPastDayShowsWhatWasKnownThen() {
        positive("A");
        events.recordedAt("2026-03-30 10:00").add("sample-result", "A", "2026-03-30 09:00", "result: negative");
        Herd past = Herd.asOf(events.instant("2026-03-20 00:00"));
        past.apply(events.all());
        assertEquals(List.of("A"), keys(past.cohort()));
        Herd before = Herd.asOf(events.instant("2026-03-09 08:59"));
        before.apply(events.all());
        assertEquals(List.of(), keys(before.cohort()));
        assertEquals(List.of(), alerts());
    }
}
