package wisp.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class WilsonIntervalTest {

    // R 4.2.2: prop.test(x, n, correct = FALSE)$conf.int
    @Test
    void theLimitsAreThoseOfPropTest() {
        ReferenceFile reference = ReferenceFile.read("wilson-ci");
        int[] x = reference.integers("input/data/x");
        int[] n = reference.integers("input/data/n");
        for (int i = 0; i < x.length; i++) {
            Interval interval = WilsonInterval.of(x[i], n[i], reference.number("input/level"));
            String what = x[i] + " of " + n[i];
            ReferenceFile.assertClose(reference.numbers("expected/estimate")[i], interval.value(), 1e-6, what);
            ReferenceFile.assertClose(reference.numbers("expected/lower")[i], interval.low(), 1e-6, what);
            ReferenceFile.assertClose(reference.numbers("expected/upper")[i], interval.high(), 1e-6, what);
            assertEquals("Wilson score", interval.method());
        }
    }

    // R 4.2.2: prop.test(81, 263, conf.level = level, correct = FALSE)$conf.int
    @Test
    void otherLevelsAreThoseOfPropTest() {
        ReferenceFile reference = ReferenceFile.read("wilson-ci-levels");
        double[] levels = reference.numbers("input/level");
        for (int i = 0; i < levels.length; i++) {
            Interval interval =
                    WilsonInterval.of(reference.integer("input/x"), reference.integer("input/n"), levels[i]);
            ReferenceFile.assertClose(reference.numbers("expected/lower")[i], interval.low(), 1e-6, "low");
            ReferenceFile.assertClose(reference.numbers("expected/upper")[i], interval.high(), 1e-6, "high");
            assertEquals(levels[i], interval.level());
        }
    }

    // Printed values quoted from memory:
    // Newcombe 1998 Stat Med 17:857, Table I, method 3, printed to four places.
    @Test
    void theFourPrintedExamplesOfNewcombeAreMet() {
        assertPrinted(81, 263, 0.2553, 0.3662);
        assertPrinted(15, 148, 0.0624, 0.1605);
        assertPrinted(0, 20, 0.0000, 0.1611);
        assertPrinted(1, 29, 0.0061, 0.1718);
    }

    private static void assertPrinted(int x, int n, double low, double high) {
        Interval interval = WilsonInterval.of(x, n, 0.95);
        assertEquals(low, interval.low(), 0.00005);
        assertEquals(high, interval.high(), 0.00005);
    }

    @Test
    void theLimitsAreTheRootsOfTheScoreEquation() {
        double z = 1.959963984540054; // the 0.975 quantile of the normal distribution
        for (int x = 1; x < 12; x++) {
            Interval interval = WilsonInterval.of(x, 12, 0.95);
            for (double p : new double[] {interval.low(), interval.high()}) {
                assertEquals(z, Math.abs(x / 12.0 - p) / Math.sqrt(p * (1 - p) / 12), 1e-9);
            }
        }
    }

    @Test
    void noneOfNBeginsAtZeroAndAllOfNEndsAtOne() {
        assertEquals(0, WilsonInterval.of(0, 7, 0.95).low());
        assertEquals(1, WilsonInterval.of(7, 7, 0.95).high());
        assertEquals(0, WilsonInterval.of(0, 1, 0.95).low());
        assertEquals(1, WilsonInterval.of(1, 1, 0.95).high());
        assertTrue(WilsonInterval.of(0, 7, 0.95).high() > 0);
    }

    @Test
    void casesAndNonCasesMirrorEachOther() {
        for (int x = 0; x <= 30; x++) {
            Interval cases = WilsonInterval.of(x, 30, 0.9);
            Interval others = WilsonInterval.of(30 - x, 30, 0.9);
            assertEquals(cases.low(), 1 - others.high(), 1e-12);
        }
    }

    @Test
    void moreCasesMoveBothLimitsUpAndTheEstimateIsInside() {
        for (int x = 1; x <= 40; x++) {
            Interval before = WilsonInterval.of(x - 1, 40, 0.95);
            Interval after = WilsonInterval.of(x, 40, 0.95);
            assertTrue(before.low() < after.low() && before.high() < after.high());
            assertTrue(after.low() <= after.value() && after.value() <= after.high());
        }
    }

    @Test
    void aHigherLevelIsWider() {
        assertTrue(WilsonInterval.of(3, 25, 0.99).low()
                < WilsonInterval.of(3, 25, 0.95).low());
        assertTrue(WilsonInterval.of(3, 25, 0.99).high()
                > WilsonInterval.of(3, 25, 0.95).high());
    }

    // Agresti & Coull 1998 Am Stat 52:119: mean coverage of the score interval is close to nominal at every n,
    // and dips beside 0 and 1.
    @Test
    void theCoverageIsNearNominalOnAverageEvenForTen() {
        for (int n : new int[] {5, 10, 20, 50}) {
            double sum = 0;
            double smallest = 1;
            for (int i = 1; i < 1000; i++) {
                double covered = ExactCoverage.binomial(n, i / 1000.0, x -> WilsonInterval.of(x, n, 0.95));
                sum += covered;
                smallest = Math.min(smallest, covered);
            }
            assertEquals(0.95, sum / 999, 0.01, "mean coverage at n = " + n);
            assertTrue(smallest > 0.82, "smallest coverage " + smallest + " at n = " + n);
        }
    }

    @Test
    void impossibleCountsAndLevelsAreRefusedInASentence() {
        assertEquals(
                "The proportion cannot be estimated because nobody was observed: n is 0.",
                assertThrows(CannotEstimate.class, () -> WilsonInterval.of(0, 0, 0.95))
                        .getMessage());
        assertEquals(
                "The proportion cannot be estimated because there are more cases, 4, than observed, 3.",
                assertThrows(CannotEstimate.class, () -> WilsonInterval.of(4, 3, 0.95))
                        .getMessage());
        assertEquals(
                "The proportion cannot be estimated because the number of cases, -1, is negative.",
                assertThrows(CannotEstimate.class, () -> WilsonInterval.of(-1, 3, 0.95))
                        .getMessage());
        assertEquals(
                "The proportion cannot be estimated because the number observed, -3, is negative.",
                assertThrows(CannotEstimate.class, () -> WilsonInterval.of(0, -3, 0.95))
                        .getMessage());
        for (double level : new double[] {0, 1, -0.1, 95, Double.NaN}) {
            assertEquals(
                    "The proportion cannot be estimated because the confidence level, " + level
                            + ", is not between 0 and 1.",
                    assertThrows(CannotEstimate.class, () -> WilsonInterval.of(1, 3, level))
                            .getMessage());
        }
    }
}
