package wisp.sample;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.Test;
import wisp.sample.TissueSample.State;
import wisp.testing.Calf;

class SampleChainTest {
    private static final ZoneId LONDON = ZoneId.of("Europe/London");
    private static final String TAG = "tag_number: UK 123450 600001";

    private final Calf calf = Calf.bornAt("2026-03-01 07:30");

    private List<TissueSample> samples() {
        return SampleChain.of(calf.life()).samples();
    }

    private List<State> states() {
        return samples().stream().map(TissueSample::state).toList();
    }

    private long waiting(String now) {
        return samples().get(samples().size() - 1).daysWaiting(calf.events().instant(now), LONDON);
    }

    private String standing() {
        return SampleChain.counts(calf.life())
                .map(result -> TissueSample.state(result).word())
                .orElse("");
    }

    @Test
    void aSampleGoesFromTakenOverSentToItsResult() {
        assertEquals(List.of(), states());
        calf.at("2026-03-03 09:00", "tissue-sampled", TAG);
        assertEquals(List.of(State.TAKEN), states());
        calf.at("2026-03-05 09:00", "sample-sent", "laboratory: north");
        assertEquals(List.of(State.SENT), states());
        calf.at("2026-03-09", "sample-result", "result: negative, tag_number: uk123450600001");
        assertEquals(List.of(State.NEGATIVE), states());
        assertEquals("UK 123450 600001", samples().get(0).tagNumber());
        assertEquals("north", samples().get(0).laboratory());
        assertEquals(0, waiting("2026-04-01 12:00"));
    }

    @Test
    void daysOfWaitingAreCountedByTheFarmsCalendar() {
        calf.at("2026-03-27 23:30", "tissue-sampled", TAG);
        assertEquals(0, waiting("2026-03-27 23:59"));
        assertEquals(1, waiting("2026-03-28 00:00"));
        assertEquals(3, waiting("2026-03-30 00:00"), "over the night on which clocks go forward");
        calf.at("2026-03-29", "sample-sent", TAG);
        assertEquals(3, waiting("2026-03-30 00:00"), "from the taking, not the sending");
    }

    @Test
    void waitingEndsWhenTheCalfDiesOrLeaves() {
        calf.at("2026-03-03 09:00", "tissue-sampled", TAG);
        assertEquals(7, waiting("2026-03-10 12:00"));
        calf.at("2026-03-08 09:00", "died", "");
        assertEquals(0, waiting("2026-03-10 12:00"));
        assertEquals(List.of(State.TAKEN), states());
        assertTrue(samples().get(0).unanswered());
        calf.at("2026-03-12 09:00", "sample-result", "result: positive");
        assertEquals("positive", standing(), "an answer after death is an answer");
    }

    @Test
    void aSampleThatHasItsResultIsNotUnansweredWhenTheCalfLeaves() {
        calf.at("2026-03-03 09:00", "tissue-sampled", TAG);
        calf.at("2026-03-09 09:00", "sample-result", "result: negative");
        calf.at("2026-04-08 09:00", "left", "reason: sold");
        assertFalse(samples().get(0).unanswered());
    }

    @Test
    void eventsOfOneDayWithoutHoursJoinInAnyOrder() {
        calf.at("2026-03-03", "sample-sent", TAG);
        calf.at("2026-03-03 09:00", "tissue-sampled", TAG);
        assertEquals(List.of(State.SENT), states());
    }

    @Test
    void aSecondSampleOvertakesAFirstThatHasNoResult() {
        calf.at("2026-03-03 09:00", "tissue-sampled", TAG);
        calf.at("2026-03-20 09:00", "tissue-sampled", TAG);
        assertEquals(List.of(State.TAKEN_AGAIN, State.TAKEN), states());
        calf.at("2026-03-25", "sample-result", "result: negative");
        assertEquals(List.of(State.TAKEN_AGAIN, State.NEGATIVE), states());
    }

    @Test
    void aResultGoesToTheSampleOfItsNumber() {
        calf.at("2026-03-03 09:00", "tissue-sampled", "tag_number: S1");
        calf.at("2026-03-04 09:00", "tissue-sampled", "tag_number: S2");
        calf.at("2026-03-09 09:00", "sample-result", "result: inconclusive, tag_number: S1");
        assertEquals(List.of(State.INCONCLUSIVE, State.TAKEN), states());
    }

    @Test
    void aResultWithoutARecordedSampleStandsByItself() {
        calf.at("2026-03-09 09:00", "sample-result", "result: positive, test: blood");
        assertEquals(List.of(State.POSITIVE), states());
        assertEquals("blood", samples().get(0).test());
    }

    @Test
    void theLaterResultCounts() {
        assertEquals("", standing());
        calf.at("2026-03-09 09:00", "sample-result", "result: positive");
        assertEquals("positive", standing());
        calf.at("2026-03-30 09:00", "sample-result", "result: negative");
        assertEquals("negative", standing());
        calf.at("2026-04-30 09:00", "sample-result", "result: inconclusive");
        assertEquals("inconclusive", standing());
    }

    @Test
    void theLaterResultCountsThoughItWasRecordedFirst() {
        calf.at("2026-03-30 09:00", "sample-result", "result: negative");
        calf.at("2026-03-09 09:00", "sample-result", "result: positive");
        assertEquals("negative", standing());
    }

    @Test
    void ofOneDayWithoutHoursTheWorstCounts() {
        calf.at("2026-03-09", "sample-result", "result: positive");
        calf.at("2026-03-09 12:00", "sample-result", "result: negative");
        assertEquals("positive", standing());
        calf.at("2026-03-10", "sample-result", "result: negative");
        assertEquals("negative", standing());
    }

    @Test
    void aPositiveResultDatedBeforeBirthByMistakeCounts() {
        calf.at("2026-02-09", "sample-result", "result: positive");
        assertEquals(1, calf.life().marks().size());
        assertEquals("positive", standing());
    }

    @Test
    void aRetractedResultSaysNothing() {
        var wrong = calf.at("2026-03-09 09:00", "sample-result", "result: positive");
        calf.events().retract(wrong, "2026-03-10 09:00");
        assertEquals("", standing());
    }
}
