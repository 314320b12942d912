package wisp.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static wisp.statistics.OddsRatio.Method.FISHER_EXACT_CONDITIONAL;
import static wisp.statistics.OddsRatio.Method.MID_P_EXACT;
import static wisp.statistics.OddsRatio.Method.WOOLF_LOGIT;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class OddsRatioTest {

    // R 4.2.2, epiR 2.0.57: epi.2by2()$massoc.detail$OR.strata.wald and $OR.strata.mle (fisher.test inside)
    @ParameterizedTest
    @ValueSource(strings = {"two-by-two-birthwt", "two-by-two-doll-hill-1950", "two-by-two-epir-cats"})
    void woolfAndExactAreThoseOfEpiR(String name) {
        ReferenceFile reference = ReferenceFile.read(name);
        TwoByTwoTable table = table(reference);
        assertReference(reference, "OR.strata.wald", OddsRatio.of(table, 0.95, WOOLF_LOGIT), 1e-6);
        Interval exact = OddsRatio.of(table, 0.95, FISHER_EXACT_CONDITIONAL);
        assertUniroot(reference.number("expected/OR.strata.mle/est"), exact.value());
        assertUniroot(reference.number("expected/OR.strata.mle/lower"), exact.low());
        assertUniroot(reference.number("expected/OR.strata.mle/upper"), exact.high());
    }

    // R 4.2.2: fisher.test(table)$estimate and $conf.int
    @ParameterizedTest
    @ValueSource(strings = {"fisher-exact-tea", "fisher-exact-twins", "fisher-zero-cell"})
    void theExactIntervalIsThatOfFisherTest(String name) {
        ReferenceFile reference = ReferenceFile.read(name);
        Interval interval = OddsRatio.of(table(reference), 0.95, FISHER_EXACT_CONDITIONAL);
        assertUniroot(reference.number("expected/or_cmle"), interval.value());
        assertUniroot(reference.numbers("expected/or_ci")[0], interval.low());
        assertUniroot(reference.numbers("expected/or_ci")[1], interval.high());
    }

    // R 4.2.2, epitools 0.5.10.1: oddsratio.midp(table)
    @Test
    void theMidPIntervalIsThatOfEpitools() {
        ReferenceFile reference = ReferenceFile.read("risk-ratio-odds-ratio-epitools");
        double[] expected = reference.matrix("expected/midp/measure")[1];
        Interval interval = OddsRatio.of(new TwoByTwoTable(647, 622, 2, 27), 0.95, MID_P_EXACT);
        assertUniroot(expected[0], interval.value());
        assertUniroot(expected[1], interval.low());
        assertUniroot(expected[2], interval.high());
    }

    // R 4.2.2: the same equations solved by uniroot(tol = 1e-15).
    @Test
    void theExactIntervalsAreThoseOfTheEquationsSolvedToTheEnd() {
        ReferenceFile reference = ReferenceFile.read("odds-ratio-rate-ratio-exact-tight");
        double[][] tables = reference.matrix("input/tables");
        for (int i = 0; i < tables.length; i++) {
            double[] t = tables[i];
            TwoByTwoTable table = new TwoByTwoTable((int) t[0], (int) t[1], (int) t[2], (int) t[3]);
            assertRow(reference.matrix("expected/conditional")[i], OddsRatio.of(table, 0.95, FISHER_EXACT_CONDITIONAL));
            assertRow(reference.matrix("expected/midp")[i], OddsRatio.of(table, 0.95, MID_P_EXACT));
        }
    }

    private static void assertRow(double[] expected, Interval interval) {
        ReferenceFile.assertClose(expected[0], interval.value(), 1e-6, "value");
        ReferenceFile.assertClose(expected[1], interval.low(), 1e-6, "low");
        ReferenceFile.assertClose(expected[2], interval.high(), 1e-6, "high");
    }

    // fisher.test and epitools search the odds ratio, or its inverse above 1, with uniroot's default tolerance of
    // 1.2e-4.
    private static void assertUniroot(double expected, double actual) {
        if (expected > 1) {
            assertEquals(1 / expected, 1 / actual, 1.3e-4);
        } else {
            assertEquals(expected, actual, 1.3e-4);
        }
    }

    // Printed values quoted from memory:
    // Doll & Hill 1950 BMJ 2:739, men: the odds ratio printed for it in textbooks is 14.04.
    @Test
    void dollAndHillHasAnOddsRatioOfFourteen() {
        assertEquals(
                14.04,
                OddsRatio.of(new TwoByTwoTable(647, 622, 2, 27), 0.95, WOOLF_LOGIT)
                        .value(),
                0.005);
    }

    // The tea table's conditional likelihood: the mean of 0..4 with weights 1, 16 θ, 36 θ², 16 θ³, θ⁴ is 3.
    @Test
    void theTeaEstimateSolvesItsPolynomial() {
        double theta = OddsRatio.of(new TwoByTwoTable(3, 1, 1, 3), 0.95, FISHER_EXACT_CONDITIONAL)
                .value();
        double mass = 1 + 16 * theta + 36 * Math.pow(theta, 2) + 16 * Math.pow(theta, 3) + Math.pow(theta, 4);
        double mean = (16 * theta + 72 * Math.pow(theta, 2) + 48 * Math.pow(theta, 3) + 4 * Math.pow(theta, 4)) / mass;
        assertEquals(3, mean, 1e-9);
    }

    // Lower limit of the tea table: (16 θ³ + θ⁴) / (1 + 16 θ + 36 θ² + 16 θ³ + θ⁴) = 0.025.
    @Test
    void theTeaLimitSolvesItsPolynomial() {
        double low = OddsRatio.of(new TwoByTwoTable(3, 1, 1, 3), 0.95, FISHER_EXACT_CONDITIONAL)
                .low();
        double tail = 16 * Math.pow(low, 3) + Math.pow(low, 4);
        assertEquals(0.025, tail / (1 + 16 * low + 36 * Math.pow(low, 2) + tail), 1e-9);
    }

    @ParameterizedTest
    @EnumSource(names = {"FISHER_EXACT_CONDITIONAL", "MID_P_EXACT"})
    void zeroCellsGiveOneInfiniteOrZeroEnd(OddsRatio.Method method) {
        Interval none = OddsRatio.of(new TwoByTwoTable(0, 12, 5, 4), 0.95, method);
        assertEquals(0, none.value());
        assertEquals(0, none.low());
        assertTrue(none.high() < 1);
        Interval all = OddsRatio.of(new TwoByTwoTable(12, 0, 4, 5), 0.95, method);
        assertEquals(Double.POSITIVE_INFINITY, all.value());
        assertEquals(Double.POSITIVE_INFINITY, all.high());
        assertTrue(all.low() > 1);
    }

    @Test
    void woolfIsRefusedWithAZeroCell() {
        for (TwoByTwoTable table : new TwoByTwoTable[] {
            new TwoByTwoTable(0, 12, 5, 4),
            new TwoByTwoTable(12, 0, 5, 4),
            new TwoByTwoTable(5, 4, 0, 12),
            new TwoByTwoTable(5, 4, 12, 0)
        }) {
            assertEquals(
                    "The logit interval of the odds ratio cannot be estimated because a cell of the table is 0, so"
                            + " that the logarithm does not exist (the exact method does).",
                    assertThrows(CannotEstimate.class, () -> OddsRatio.of(table, 0.95, WOOLF_LOGIT))
                            .getMessage());
        }
    }

    @ParameterizedTest
    @EnumSource
    void anEmptyMarginIsRefused(OddsRatio.Method method) {
        assertThrows(CannotEstimate.class, () -> OddsRatio.of(new TwoByTwoTable(0, 5, 0, 7), 0.95, method));
        assertThrows(CannotEstimate.class, () -> OddsRatio.of(new TwoByTwoTable(5, 0, 7, 0), 0.95, method));
        assertThrows(CannotEstimate.class, () -> OddsRatio.of(new TwoByTwoTable(0, 0, 3, 7), 0.95, method));
        assertThrows(CannotEstimate.class, () -> OddsRatio.of(new TwoByTwoTable(3, 7, 0, 0), 0.95, method));
        assertThrows(CannotEstimate.class, () -> new TwoByTwoTable(3, 7, -1, 0));
    }

    @ParameterizedTest
    @EnumSource
    void swappingGroupsOrOutcomesInvertsTheRatio(OddsRatio.Method method) {
        Random random = new Random(20263);
        for (int i = 0; i < 100; i++) {
            int a = 1 + random.nextInt(20);
            int b = 1 + random.nextInt(20);
            int c = 1 + random.nextInt(20);
            int d = 1 + random.nextInt(20);
            Interval there = OddsRatio.of(new TwoByTwoTable(a, b, c, d), 0.95, method);
            Interval groups = OddsRatio.of(new TwoByTwoTable(c, d, a, b), 0.95, method);
            Interval outcomes = OddsRatio.of(new TwoByTwoTable(b, a, d, c), 0.95, method);
            String what = "seed 20263, draw " + i;
            ReferenceFile.assertClose(there.low(), 1 / groups.high(), 1e-8, what);
            ReferenceFile.assertClose(there.value(), 1 / outcomes.value(), 1e-8, what);
            ReferenceFile.assertClose(there.low(), 1 / outcomes.high(), 1e-8, what);
            assertTrue(there.low() <= there.value() && there.value() <= there.high(), what);
        }
    }

    @Test
    void theExactCoverageIsNeverBelowTheLevel() {
        for (double p1 = 0.1; p1 < 1; p1 += 0.2) {
            for (double p2 = 0.1; p2 < 1; p2 += 0.2) {
                double truth = p1 * (1 - p2) / (p2 * (1 - p1));
                double covered = ExactCoverage.twoGroups(
                        8, p1, 10, p2, truth, t -> OddsRatio.of(t, 0.95, FISHER_EXACT_CONDITIONAL));
                assertTrue(covered >= 0.95, "coverage " + covered + " at " + p1 + ", " + p2);
            }
        }
    }

    private static TwoByTwoTable table(ReferenceFile reference) {
        double[][] cells = reference.matrix("input/table");
        return new TwoByTwoTable((int) cells[0][0], (int) cells[0][1], (int) cells[1][0], (int) cells[1][1]);
    }

    private static void assertReference(ReferenceFile reference, String slot, Interval interval, double relative) {
        ReferenceFile.assertClose(reference.number("expected/" + slot + "/est"), interval.value(), relative, slot);
        ReferenceFile.assertClose(reference.number("expected/" + slot + "/lower"), interval.low(), relative, slot);
        ReferenceFile.assertClose(reference.number("expected/" + slot + "/upper"), interval.high(), relative, slot);
    }
}
