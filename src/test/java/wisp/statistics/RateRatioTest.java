package wisp.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static wisp.statistics.RateRatio.Method.EXACT_CONDITIONAL;
import static wisp.statistics.RateRatio.Method.MID_P_EXACT;
import static wisp.statistics.RateRatio.Method.WALD_LOG;

import org.apache.commons.statistics.distribution.PoissonDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class RateRatioTest {

    // R 4.2.2: poisson.test(c(11, 6+8+7), c(800, 1083+1050+878)), its help page: Andersen 1977, Fredericia lung cancer.
    @Test
    void theExactIntervalAndTestAreThoseOfPoissonTest() {
        ReferenceFile reference = ReferenceFile.read("rate-ratio-exact");
        int[] x = reference.integers("input/x");
        double[] time = reference.numbers("input/time");
        Interval interval = RateRatio.of(x[0], time[0], x[1], time[1], 0.95, EXACT_CONDITIONAL);
        ReferenceFile.assertClose(reference.number("expected/rate_ratio"), interval.value(), 1e-6, "value");
        ReferenceFile.assertClose(reference.numbers("expected/ci")[0], interval.low(), 1e-6, "low");
        ReferenceFile.assertClose(reference.numbers("expected/ci")[1], interval.high(), 1e-6, "high");
        ReferenceFile.assertClose(
                reference.number("expected/p_value"),
                RateRatio.exactPValue(x[0], time[0], x[1], time[1]),
                1e-6,
                "p-value");
    }

    // R 4.2.2, epitools 0.5.10.1: rateratio(method = "midp") and "wald"; the mid-p root finding is good to 2e-4 only,
    // so
    // the same equation solved by uniroot(tol = 1e-16) in R 4.2.2 is held beside it.
    @Test
    void theMidPAndWaldIntervalsAreThoseOfEpitools() {
        ReferenceFile reference = ReferenceFile.read("rate-ratio-midp-wald-epitools");
        assertRow(reference.matrix("expected/midp/measure")[1], fluoroscopy(MID_P_EXACT), 2e-4);
        double[] tight = ReferenceFile.read("odds-ratio-rate-ratio-exact-tight").numbers("expected/rate_midp");
        assertRow(tight, fluoroscopy(MID_P_EXACT), 1e-6);
        ReferenceFile.assertClose(
                reference.matrix("expected/midp/p")[1][0], RateRatio.midPValue(41, 28010, 15, 19017), 1e-6, "mid-p");
        assertRow(reference.matrix("expected/wald/measure")[1], fluoroscopy(WALD_LOG), 1e-6);
    }

    // R 4.2.2, epiR 2.0.57: epi.2by2(method = "cohort.time"), whose slot named "wald" holds the exact interval.
    @Test
    void theExactIntervalIsThatOfEpiR() {
        ReferenceFile reference = ReferenceFile.read("rate-ratio-difference-wald");
        double[] expected = {
            reference.number("expected/IRR/est"),
            reference.number("expected/IRR/lower"),
            reference.number("expected/IRR/upper")
        };
        assertRow(expected, fluoroscopy(EXACT_CONDITIONAL), 1e-6);
    }

    // Printed values quoted from memory:
    // Rothman & Greenland, Modern Epidemiology, 2nd ed. 1998, ch. 14: fluoroscopy and breast cancer, 41
    // in 28,010 against 15 in 19,017 person-years, rate ratio 1.86, 95 % limits 1.03 and 3.35.
    @Test
    void thePrintedFluoroscopyExampleIsMet() {
        Interval interval = fluoroscopy(WALD_LOG);
        assertEquals(1.86, interval.value(), 0.005);
        assertEquals(1.03, interval.low(), 0.005);
        assertEquals(3.35, interval.high(), 0.005);
    }

    private static Interval fluoroscopy(RateRatio.Method method) {
        return RateRatio.of(41, 28010, 15, 19017, 0.95, method);
    }

    private static void assertRow(double[] expected, Interval interval, double relative) {
        ReferenceFile.assertClose(expected[0], interval.value(), relative, "value");
        ReferenceFile.assertClose(expected[1], interval.low(), relative, "low");
        ReferenceFile.assertClose(expected[2], interval.high(), relative, "high");
    }

    @ParameterizedTest
    @EnumSource(names = {"EXACT_CONDITIONAL", "MID_P_EXACT"})
    void aGroupWithoutEventsGivesOneZeroOrInfiniteEnd(RateRatio.Method method) {
        Interval none = RateRatio.of(0, 100, 6, 90, 0.95, method);
        assertEquals(0, none.value());
        assertEquals(0, none.low());
        assertTrue(none.high() < 1.1);
        Interval all = RateRatio.of(6, 90, 0, 100, 0.95, method);
        assertEquals(Double.POSITIVE_INFINITY, all.value());
        assertEquals(Double.POSITIVE_INFINITY, all.high());
        assertEquals(1 / none.high(), all.low(), 1e-9);
    }

    @Test
    void theLogIntervalIsRefusedWithoutEventsInAGroup() {
        assertEquals(
                "The log interval of the rate ratio cannot be estimated because a group has no event, so that the"
                        + " logarithm does not exist (the exact method does).",
                assertThrows(CannotEstimate.class, () -> RateRatio.of(0, 10, 5, 10, 0.95, WALD_LOG))
                        .getMessage());
    }

    @ParameterizedTest
    @EnumSource
    void noEventsAndBadTimesAreRefused(RateRatio.Method method) {
        assertThrows(CannotEstimate.class, () -> RateRatio.of(0, 10, 0, 10, 0.95, method));
        assertThrows(CannotEstimate.class, () -> RateRatio.of(1, 0, 1, 10, 0.95, method));
        assertThrows(CannotEstimate.class, () -> RateRatio.of(1, 10, 1, Double.NaN, 0.95, method));
        assertThrows(CannotEstimate.class, () -> RateRatio.of(-1, 10, 1, 10, 0.95, method));
        assertThrows(CannotEstimate.class, () -> RateRatio.of(1, 10, 1, 10, 1, method));
    }

    @ParameterizedTest
    @EnumSource
    void swappingInvertsAndTheEstimateIsInside(RateRatio.Method method) {
        for (int x1 = 1; x1 < 12; x1++) {
            for (int x0 = 1; x0 < 12; x0++) {
                Interval there = RateRatio.of(x1, 33, x0, 71, 0.95, method);
                Interval back = RateRatio.of(x0, 71, x1, 33, 0.95, method);
                ReferenceFile.assertClose(there.low(), 1 / back.high(), 1e-9, x1 + " against " + x0);
                assertTrue(there.low() <= there.value() && there.value() <= there.high());
            }
        }
    }

    @Test
    void theExactCoverageIsNeverBelowTheLevel() {
        for (double mean = 1; mean < 8; mean += 1.3) {
            PoissonDistribution exposed = PoissonDistribution.of(2 * mean);
            PoissonDistribution unexposed = PoissonDistribution.of(mean);
            double covered = exposed.probability(0) * unexposed.probability(0);
            for (int x1 = 0; x1 < 60; x1++) {
                for (int x0 = x1 == 0 ? 1 : 0; x0 < 60; x0++) {
                    Interval interval = RateRatio.of(x1, 100, x0, 100, 0.95, EXACT_CONDITIONAL);
                    if (interval.low() <= 2 && 2 <= interval.high()) {
                        covered += exposed.probability(x1) * unexposed.probability(x0);
                    }
                }
            }
            assertTrue(covered >= 0.95, "coverage " + covered + " at mean " + mean);
        }
    }

    @Test
    void theMidPCoverageIsNearNominal() {
        double sum = 0;
        int points = 0;
        for (double mean = 2; mean < 9; mean += 1) {
            PoissonDistribution exposed = PoissonDistribution.of(2 * mean);
            PoissonDistribution unexposed = PoissonDistribution.of(mean);
            double covered = exposed.probability(0) * unexposed.probability(0);
            for (int x1 = 0; x1 < 50; x1++) {
                for (int x0 = x1 == 0 ? 1 : 0; x0 < 35; x0++) {
                    Interval interval = RateRatio.of(x1, 100, x0, 100, 0.95, MID_P_EXACT);
                    if (interval.low() <= 2 && 2 <= interval.high()) {
                        covered += exposed.probability(x1) * unexposed.probability(x0);
                    }
                }
            }
            assertTrue(covered > 0.93, "coverage " + covered + " at mean " + mean);
            sum += covered;
            points++;
        }
        assertEquals(0.955, sum / points, 0.012);
    }
}
