package wisp.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static wisp.statistics.RiskRatio.Method.KATZ_LOG;
import static wisp.statistics.RiskRatio.Method.KOOPMAN_SCORE;
import static wisp.statistics.RiskRatio.Method.MIETTINEN_NURMINEN_SCORE;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class RiskRatioTest {

    // R 4.2.2, epiR 2.0.57: epi.2by2(method = "cohort.count")$massoc.detail$RR.strata.wald
    @ParameterizedTest
    @ValueSource(strings = {"two-by-two-birthwt", "two-by-two-epir-cats"})
    void theLogIntervalIsThatOfEpiR(String name) {
        ReferenceFile reference = ReferenceFile.read(name);
        double[][] cells = reference.matrix("input/table");
        Interval interval = RiskRatio.of(
                new TwoByTwoTable((int) cells[0][0], (int) cells[0][1], (int) cells[1][0], (int) cells[1][1]),
                0.95,
                KATZ_LOG);
        ReferenceFile.assertClose(reference.number("expected/RR.strata.wald/est"), interval.value(), 1e-6, "value");
        ReferenceFile.assertClose(reference.number("expected/RR.strata.wald/lower"), interval.low(), 1e-6, "low");
        ReferenceFile.assertClose(reference.number("expected/RR.strata.wald/upper"), interval.high(), 1e-6, "high");
    }

    // statsmodels 0.13.5: confint_proportions_2indep(compare='ratio', method='log') and method='score', which carries
    // the N/(N-1) of Miettinen & Nurminen and whose root finding is good to 1e-5.
    @Test
    void theLogAndTheCorrectedScoreIntervalsAreThoseOfStatsmodels() {
        ReferenceFile reference = ReferenceFile.read("two-proportions-statsmodels");
        double[][] input = reference.matrix("input");
        for (int i = 0; i < input.length; i++) {
            TwoByTwoTable table =
                    TwoByTwoTable.ofGroups((int) input[i][0], (int) input[i][1], (int) input[i][2], (int) input[i][3]);
            double[] log = reference.numbers("expected/" + i + "/ratio:log");
            ReferenceFile.assertClose(
                    log[0], RiskRatio.of(table, 0.95, KATZ_LOG).low(), 1e-6, "log low");
            ReferenceFile.assertClose(
                    log[1], RiskRatio.of(table, 0.95, KATZ_LOG).high(), 1e-6, "log high");
            double[] score = reference.numbers("expected/" + i + "/ratio:score");
            Interval corrected = RiskRatio.of(table, 0.95, MIETTINEN_NURMINEN_SCORE);
            ReferenceFile.assertClose(score[0], corrected.low(), 1e-5, "score low");
            ReferenceFile.assertClose(score[1], corrected.high(), 1e-5, "score high");
        }
    }

    // R 4.2.2, epitools 0.5.10.1: riskratio.wald(table), whose rows and columns run from the unexposed and the
    // controls.
    @Test
    void katzIsThatOfEpitoolsForDollAndHill() {
        double[] printed = ReferenceFile.read("risk-ratio-odds-ratio-epitools").matrix("expected/rr_wald/measure")[1];
        Interval ratio = RiskRatio.of(new TwoByTwoTable(647, 622, 2, 27), 0.95, RiskRatio.Method.KATZ_LOG);
        ReferenceFile.assertClose(printed[0], ratio.value(), 1e-6, "value");
        ReferenceFile.assertClose(printed[1], ratio.low(), 1e-6, "low");
        ReferenceFile.assertClose(printed[2], ratio.high(), 1e-6, "high");
    }

    // Koopman 1984 Biometrics 40:513, example, from memory: 36 of 40 against 16 of 80, printed 95 % limits 2.94 and
    // 7.15.
    @Test
    void thePrintedExampleOfKoopmanIsMet() {
        Interval interval = RiskRatio.of(TwoByTwoTable.ofGroups(36, 40, 16, 80), 0.95, KOOPMAN_SCORE);
        assertEquals(4.5, interval.value(), 1e-12);
        assertEquals(2.94, interval.low(), 0.005);
        assertEquals(7.15, interval.high(), 0.005);
    }

    // CDC Principles of Epidemiology, 3rd ed., lesson 3: tuberculosis in a prison, 28 of 157 against 4 of 137, RR 6.1.
    @Test
    void thePrisonOutbreakHasARatioOfSixPointOne() {
        Interval interval = RiskRatio.of(new TwoByTwoTable(28, 129, 4, 133), 0.95, KATZ_LOG);
        assertEquals(6.108, interval.value(), 0.0005);
        assertEquals(2.198, interval.low(), 0.0005);
        assertEquals(16.978, interval.high(), 0.0005);
    }

    // Koopman's chi-square is the Pearson chi-square about the fitted counts: at a limit it is the chi-square quantile.
    @Test
    void atAScoreLimitThePearsonChiSquareIsTheQuantile() {
        Interval interval = RiskRatio.of(TwoByTwoTable.ofGroups(7, 25, 4, 31), 0.95, KOOPMAN_SCORE);
        for (double theta : new double[] {interval.low(), interval.high()}) {
            double best = Double.POSITIVE_INFINITY;
            double logLikelihood = Double.NEGATIVE_INFINITY;
            for (int i = 1; i < 2_000_000; i++) {
                double p2 = i / 2_000_000.0 * Math.min(1, 1 / theta);
                double p1 = theta * p2;
                double fit = 7 * Math.log(p1) + 18 * Math.log(1 - p1) + 4 * Math.log(p2) + 27 * Math.log(1 - p2);
                if (fit > logLikelihood) {
                    logLikelihood = fit;
                    best = Math.pow(7 - 25 * p1, 2) / (25 * p1 * (1 - p1))
                            + Math.pow(4 - 31 * p2, 2) / (31 * p2 * (1 - p2));
                }
            }
            assertEquals(3.841458820694124, best, 1e-4); // chi-square, 1 df, 0.95
        }
    }

    @Test
    void noExposedCaseIsZeroWithAFiniteUpperLimit() {
        Interval interval = RiskRatio.of(TwoByTwoTable.ofGroups(0, 20, 5, 20), 0.95, KOOPMAN_SCORE);
        assertEquals(0, interval.value());
        assertEquals(0, interval.low());
        assertTrue(interval.high() > 0.1 && interval.high() < 1.2, "high " + interval.high());
    }

    @Test
    void noUnexposedCaseIsInfiniteWithAFiniteLowerLimit() {
        Interval interval = RiskRatio.of(TwoByTwoTable.ofGroups(5, 20, 0, 20), 0.95, KOOPMAN_SCORE);
        Interval mirrored = RiskRatio.of(TwoByTwoTable.ofGroups(0, 20, 5, 20), 0.95, KOOPMAN_SCORE);
        assertEquals(Double.POSITIVE_INFINITY, interval.value());
        assertEquals(Double.POSITIVE_INFINITY, interval.high());
        assertEquals(1 / mirrored.high(), interval.low(), 1e-9);
    }

    // All cases in both: the restricted fit has p1 = 1 for θ > 1, hence (θ - 1) n2 = z² and the upper limit is 1 +
    // z²/n2.
    @Test
    void everyoneACaseHasTheClosedFormOfTheScore() {
        Interval interval = RiskRatio.of(TwoByTwoTable.ofGroups(10, 10, 8, 8), 0.95, KOOPMAN_SCORE);
        assertEquals(1, interval.value());
        assertEquals(1 + 3.841458820694124 / 8, interval.high(), 1e-9);
        assertEquals(1 / (1 + 3.841458820694124 / 10), interval.low(), 1e-9);
    }

    @Test
    void theLogIntervalIsRefusedWhereItDoesNotExist() {
        assertEquals(
                "The log interval of the risk ratio cannot be estimated because a group has no case, so that the"
                        + " logarithm does not exist (the score method does).",
                assertThrows(
                                CannotEstimate.class,
                                () -> RiskRatio.of(TwoByTwoTable.ofGroups(0, 20, 5, 20), 0.95, KATZ_LOG))
                        .getMessage());
        assertThrows(CannotEstimate.class, () -> RiskRatio.of(TwoByTwoTable.ofGroups(5, 20, 0, 20), 0.95, KATZ_LOG));
        assertThrows(CannotEstimate.class, () -> RiskRatio.of(TwoByTwoTable.ofGroups(5, 5, 7, 7), 0.95, KATZ_LOG));
    }

    @ParameterizedTest
    @EnumSource
    void noCaseAnywhereAndEmptyGroupsAreRefused(RiskRatio.Method method) {
        assertEquals(
                "The risk ratio cannot be estimated because there is no case in either group.",
                assertThrows(
                                CannotEstimate.class,
                                () -> RiskRatio.of(TwoByTwoTable.ofGroups(0, 20, 0, 20), 0.95, method))
                        .getMessage());
        assertThrows(CannotEstimate.class, () -> RiskRatio.of(TwoByTwoTable.ofGroups(0, 0, 1, 20), 0.95, method));
        assertThrows(CannotEstimate.class, () -> RiskRatio.of(TwoByTwoTable.ofGroups(1, 9, 1, 20), 0, method));
    }

    @ParameterizedTest
    @EnumSource
    void swappingTheGroupsInvertsTheRatio(RiskRatio.Method method) {
        Random random = new Random(20262);
        for (int i = 0; i < 200; i++) {
            int n1 = 2 + random.nextInt(60);
            int n2 = 2 + random.nextInt(60);
            int x1 = 1 + random.nextInt(n1 - 1);
            int x2 = 1 + random.nextInt(n2 - 1);
            Interval there = RiskRatio.of(TwoByTwoTable.ofGroups(x1, n1, x2, n2), 0.95, method);
            Interval back = RiskRatio.of(TwoByTwoTable.ofGroups(x2, n2, x1, n1), 0.95, method);
            String what = "seed 20262, draw " + i + ": " + x1 + "/" + n1 + " against " + x2 + "/" + n2;
            ReferenceFile.assertClose(there.low(), 1 / back.high(), 1e-8, what);
            assertTrue(there.low() <= there.value() && there.value() <= there.high(), what);
        }
    }

    @Test
    void theScoreCoverageIsNearNominalForGroupsOfTenAndFifteen() {
        double sum = 0;
        double smallest = 1;
        int points = 0;
        for (double p1 = 0.15; p1 < 0.9; p1 += 0.1) {
            for (double p2 = 0.15; p2 < 0.9; p2 += 0.1) {
                double covered =
                        ExactCoverage.twoGroups(10, p1, 15, p2, p1 / p2, t -> RiskRatio.of(t, 0.95, KOOPMAN_SCORE));
                sum += covered;
                smallest = Math.min(smallest, covered);
                points++;
            }
        }
        assertEquals(0.95, sum / points, 0.02);
        assertTrue(smallest > 0.88, "smallest coverage " + smallest);
    }
}
