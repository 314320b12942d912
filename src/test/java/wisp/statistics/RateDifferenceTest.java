package wisp.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class RateDifferenceTest {

    // R 4.2.2, epiR 2.0.57: epi.2by2(method = "cohort.time")$massoc.detail$ARate.strata.wald
    @Test
    void theDifferenceIsThatOfEpiR() {
        ReferenceFile reference = ReferenceFile.read("rate-ratio-difference-wald");
        Interval interval = RateDifference.wald(41, 28010, 15, 19017, 0.95);
        ReferenceFile.assertClose(reference.number("expected/ARate/est"), interval.value(), 1e-6, "value");
        ReferenceFile.assertClose(reference.number("expected/ARate/lower"), interval.low(), 1e-6, "low");
        ReferenceFile.assertClose(reference.number("expected/ARate/upper"), interval.high(), 1e-6, "high");
    }

    // epiR manual, example 3: 136 in 22,050 against 1,709 in 127,650 person-years, printed -7.22 per 1,000.
    @Test
    void thePrintedManualExampleIsMet() {
        assertEquals(
                -7.2204,
                1000 * RateDifference.wald(136, 22050, 1709, 127650, 0.95).value(),
                0.00005);
    }

    // 5 in 10 against 2 in 10: 0.3, variance 7/100, reach 1.959964 * 0.264575.
    @Test
    void aSmallExampleCanBeDoneByHand() {
        Interval interval = RateDifference.wald(5, 10, 2, 10, 0.95);
        assertEquals(0.3, interval.value(), 1e-12);
        assertEquals(0.3 - 1.959964 * Math.sqrt(0.07), interval.low(), 1e-6);
        assertEquals(-interval.low(), RateDifference.wald(2, 10, 5, 10, 0.95).high(), 1e-12);
    }

    @Test
    void noEventsAndBadTimesAreRefused() {
        assertEquals(
                "The rate difference cannot be estimated because there is no event in either group.",
                assertThrows(CannotEstimate.class, () -> RateDifference.wald(0, 5, 0, 5, 0.95))
                        .getMessage());
        assertThrows(CannotEstimate.class, () -> RateDifference.wald(1, 0, 2, 5, 0.95));
        assertThrows(CannotEstimate.class, () -> RateDifference.wald(1, 5, -2, 5, 0.95));
        assertThrows(CannotEstimate.class, () -> RateDifference.wald(1, 5, 2, 5, 2));
    }
}
