package wisp.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.junit.jupiter.api.Test;

class ClopperPearsonIntervalTest {

    // R 4.2.2: binom.test(x, n)$conf.int
    @Test
    void theLimitsAreThoseOfBinomTest() {
        ReferenceFile reference = ReferenceFile.read("clopper-pearson-ci");
        int[] x = reference.integers("input/data/x");
        int[] n = reference.integers("input/data/n");
        for (int i = 0; i < x.length; i++) {
            Interval interval = ClopperPearsonInterval.of(x[i], n[i], reference.number("input/level"));
            String what = x[i] + " of " + n[i];
            ReferenceFile.assertClose(reference.numbers("expected/estimate")[i], interval.value(), 1e-6, what);
            ReferenceFile.assertClose(reference.numbers("expected/lower")[i], interval.low(), 1e-6, what);
            ReferenceFile.assertClose(reference.numbers("expected/upper")[i], interval.high(), 1e-6, what);
        }
    }

    // Printed values quoted from memory:
    // Newcombe 1998 Stat Med 17:857, Table I, method 5, printed to four places.
    @Test
    void theFourPrintedExamplesOfNewcombeAreMet() {
        assertPrinted(81, 263, 0.2527, 0.3676);
        assertPrinted(15, 148, 0.0578, 0.1617);
        assertPrinted(0, 20, 0.0000, 0.1684);
        assertPrinted(1, 29, 0.0009, 0.1776);
    }

    private static void assertPrinted(int x, int n, double low, double high) {
        Interval interval = ClopperPearsonInterval.of(x, n, 0.95);
        assertEquals(low, interval.low(), 0.00005);
        assertEquals(high, interval.high(), 0.00005);
    }

    @Test
    void eachTailAtALimitIsHalfOfAlpha() {
        for (int x = 1; x < 15; x++) {
            Interval interval = ClopperPearsonInterval.of(x, 15, 0.9);
            assertEquals(0.05, BinomialDistribution.of(15, interval.low()).survivalProbability(x - 1), 1e-10);
            assertEquals(0.05, BinomialDistribution.of(15, interval.high()).cumulativeProbability(x), 1e-10);
        }
    }

    // With no case, (1 - high)^n = alpha/2, so high = 1 - 0.025^(1/n).
    @Test
    void noneOfNHasAClosedForm() {
        for (int n : new int[] {1, 2, 10, 1000}) {
            Interval none = ClopperPearsonInterval.of(0, n, 0.95);
            assertEquals(0, none.low());
            assertEquals(1 - Math.pow(0.025, 1.0 / n), none.high(), 1e-12);
            Interval all = ClopperPearsonInterval.of(n, n, 0.95);
            assertEquals(Math.pow(0.025, 1.0 / n), all.low(), 1e-12);
            assertEquals(1, all.high());
        }
    }

    @Test
    void theCoverageIsNeverBelowTheLevel() {
        for (int n : new int[] {1, 2, 5, 10, 20}) {
            for (int i = 1; i < 200; i++) {
                double covered = ExactCoverage.binomial(n, i / 200.0, x -> ClopperPearsonInterval.of(x, n, 0.95));
                assertTrue(covered >= 0.95, "coverage " + covered + " at n = " + n + ", p = " + i / 200.0);
            }
        }
    }

    @Test
    void moreCasesMoveBothLimitsUpAndTheEstimateIsInside() {
        for (int x = 1; x <= 40; x++) {
            Interval before = ClopperPearsonInterval.of(x - 1, 40, 0.95);
            Interval after = ClopperPearsonInterval.of(x, 40, 0.95);
            assertTrue(before.low() < after.low() && before.high() < after.high());
            assertTrue(after.low() <= after.value() && after.value() <= after.high());
        }
    }

    @Test
    void impossibleCountsAndLevelsAreRefused() {
        assertThrows(CannotEstimate.class, () -> ClopperPearsonInterval.of(0, 0, 0.95));
        assertThrows(CannotEstimate.class, () -> ClopperPearsonInterval.of(3, 2, 0.95));
        assertThrows(CannotEstimate.class, () -> ClopperPearsonInterval.of(-3, 2, 0.95));
        assertThrows(CannotEstimate.class, () -> ClopperPearsonInterval.of(1, 2, 1));
    }
}
