package wisp.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class GarwoodIntervalTest {

    // R 4.2.2: poisson.test(x, t)$conf.int
    @Test
    void theLimitsAreThoseOfPoissonTest() {
        ReferenceFile reference = ReferenceFile.read("poisson-rate-exact-ci");
        int[] events = reference.integers("input/data/events");
        double[] time = reference.numbers("input/data/time");
        for (int i = 0; i < events.length; i++) {
            Interval interval = GarwoodInterval.of(events[i], time[i], reference.number("input/level"));
            String what = events[i] + " events";
            ReferenceFile.assertClose(reference.numbers("expected/rate")[i], interval.value(), 1e-6, what);
            ReferenceFile.assertClose(reference.numbers("expected/lower")[i], interval.low(), 1e-6, what);
            ReferenceFile.assertClose(reference.numbers("expected/upper")[i], interval.high(), 1e-6, what);
        }
    }

    // R 4.2.2, epitools 0.5.10.1: pois.exact(x, pt), whose root finding is good to 1e-5.
    @Test
    void theLimitsAreThoseOfEpitools() {
        ReferenceFile reference = ReferenceFile.read("poisson-rate-exact-epitools");
        int[] events = reference.integers("input/x");
        for (int i = 0; i < events.length; i++) {
            Interval interval = GarwoodInterval.of(events[i], reference.numbers("input/pt")[i], 0.95);
            ReferenceFile.assertClose(reference.numbers("expected/lower")[i], interval.low(), 1e-5, "low");
            ReferenceFile.assertClose(reference.numbers("expected/upper")[i], interval.high(), 1e-5, "high");
        }
    }

    // Printed values quoted from memory:
    // Garwood 1936 Biometrika 28:437, table of 95 % limits of a Poisson mean, as reprinted in Altman, Machin, Bryant &
    // Gardner, Statistics with Confidence: 0: 0-3.689; 1: 0.025-5.572; 5: 1.623-11.668; 10: 4.795-18.390.
    @Test
    void thePrintedTableOfPoissonLimitsIsMet() {
        int[] events = {0, 1, 5, 10};
        double[] low = {0, 0.025, 1.623, 4.795};
        double[] high = {3.689, 5.572, 11.668, 18.390};
        for (int i = 0; i < events.length; i++) {
            Interval interval = GarwoodInterval.of(events[i], 1, 0.95);
            assertEquals(low[i], interval.low(), 0.0005);
            assertEquals(high[i], interval.high(), 0.0005);
        }
    }

    // With no event, exp(-high) = alpha/2.
    @Test
    void noEventEndsAtTheLogarithm() {
        Interval none = GarwoodInterval.of(0, 200, 0.95, 1000);
        assertEquals(0, none.value());
        assertEquals(0, none.low());
        assertEquals(-Math.log(0.025) / 200 * 1000, none.high(), 1e-11);
    }

    // CDC Principles of Epidemiology, 3rd ed., lesson 3: 16 cases in 6,400 person-years are 2.5 per 1,000.
    @Test
    void theMultiplierScalesValueAndLimits() {
        Interval plain = GarwoodInterval.of(16, 6400, 0.95);
        Interval perThousand = GarwoodInterval.of(16, 6400, 0.95, 1000);
        assertEquals(2.5, perThousand.value(), 1e-12);
        assertEquals(plain.low() * 1000, perThousand.low(), 1e-12);
        assertEquals(plain.high() * 1000, perThousand.high(), 1e-12);
    }

    @Test
    void theCoverageIsNeverBelowTheLevel() {
        for (double mean = 0.05; mean < 30; mean += 0.17) {
            double covered = ExactCoverage.poisson(mean, x -> GarwoodInterval.of(x, 1, 0.95));
            assertTrue(covered >= 0.95, "coverage " + covered + " at mean " + mean);
        }
    }

    @Test
    void moreEventsMoveBothLimitsUpAndTheEstimateIsInside() {
        for (int x = 1; x <= 60; x++) {
            Interval before = GarwoodInterval.of(x - 1, 40, 0.95);
            Interval after = GarwoodInterval.of(x, 40, 0.95);
            assertTrue(before.low() < after.low() && before.high() < after.high());
            assertTrue(after.low() <= after.value() && after.value() <= after.high());
        }
    }

    @Test
    void impossibleInputIsRefusedInASentence() {
        assertEquals(
                "The rate cannot be estimated because the time at risk, 0.0, is not a finite number above 0.",
                assertThrows(CannotEstimate.class, () -> GarwoodInterval.of(1, 0, 0.95))
                        .getMessage());
        assertEquals(
                "The rate cannot be estimated because the number of events, -1, is negative.",
                assertThrows(CannotEstimate.class, () -> GarwoodInterval.of(-1, 5, 0.95))
                        .getMessage());
        assertThrows(CannotEstimate.class, () -> GarwoodInterval.of(1, Double.NaN, 0.95));
        assertThrows(CannotEstimate.class, () -> GarwoodInterval.of(1, Double.POSITIVE_INFINITY, 0.95));
        assertThrows(CannotEstimate.class, () -> GarwoodInterval.of(1, 5, 0.95, 0));
        assertThrows(CannotEstimate.class, () -> GarwoodInterval.of(1, 5, Double.NaN));
    }
}
