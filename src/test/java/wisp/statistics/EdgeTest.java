package wisp.statistics;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;

/** Every interval, on tables full of zeros, ones and large counts: either ordered limits or a reason, never a NaN. */
class EdgeTest {

    private static final int[] COUNTS = {0, 0, 0, 1, 1, 2, 3, 7, 40, 900, 20_000};

    private int answered;
    private int refused;

    @Test
    void everyTwoByTwoIntervalIsOrderedOrRefused() {
        Random random = new Random(20275);
        for (int draw = 0; draw < 400; draw++) {
            int[] c = cells(random);
            double level = random.nextBoolean() ? 0.95 : 0.5 + random.nextDouble() / 2.01;
            TwoByTwoTable table = new TwoByTwoTable(c[0], c[1], c[2], c[3]);
            String what = "seed 20275, draw " + draw + ": " + table + " at " + level;
            for (RiskRatio.Method method : RiskRatio.Method.values()) {
                hold(() -> RiskRatio.of(table, level, method), what + " " + method);
            }
            for (OddsRatio.Method method : OddsRatio.Method.values()) {
                hold(() -> OddsRatio.of(table, level, method), what + " " + method);
            }
            hold(() -> NewcombeDifference.of(table, level), what);
            hold(() -> RiskDifference.wald(table, level), what);
            hold(() -> WilsonInterval.of(c[0], c[0] + c[1], level), what);
            hold(() -> ClopperPearsonInterval.of(c[0], c[0] + c[1], level), what);
        }
        assertTrue(answered > 1000 && refused > 100, answered + " answered, " + refused + " refused");
    }

    @Test
    void everyRateIntervalIsOrderedOrRefused() {
        Random random = new Random(20276);
        for (int draw = 0; draw < 400; draw++) {
            int[] c = cells(random);
            double t1 = Math.exp(random.nextGaussian() * 4);
            double t0 = Math.exp(random.nextGaussian() * 4);
            String what = "seed 20276, draw " + draw + ": " + c[0] + "/" + t1 + " against " + c[1] + "/" + t0;
            for (RateRatio.Method method : RateRatio.Method.values()) {
                hold(() -> RateRatio.of(c[0], t1, c[1], t0, 0.95, method), what + " " + method);
            }
            hold(() -> RateDifference.wald(c[0], t1, c[1], t0, 0.95), what);
            hold(() -> GarwoodInterval.of(c[0], t1, 0.95), what);
            hold(
                    () -> Standardisation.direct(
                            new int[] {c[0], c[1]}, new double[] {t1, t0}, new double[] {c[2], c[3]}, 0.95),
                    what);
        }
        assertTrue(answered > 1000 && refused > 50, answered + " answered, " + refused + " refused");
    }

    @Test
    void everyStratifiedIntervalIsOrderedOrRefused() {
        Random random = new Random(20277);
        for (int draw = 0; draw < 300; draw++) {
            List<TwoByTwoTable> strata = new ArrayList<>();
            for (int stratum = random.nextInt(4); stratum >= 0; stratum--) {
                strata.add(
                        new TwoByTwoTable(random.nextInt(4), random.nextInt(4), random.nextInt(4), random.nextInt(4)));
            }
            String what = "seed 20277, draw " + draw + ": " + strata;
            hold(() -> MantelHaenszel.riskRatio(strata, 0.95), what);
            hold(() -> MantelHaenszel.oddsRatio(strata, 0.95), what);
            hold(() -> MantelHaenszel.exactOddsRatio(strata, 0.95), what);
            for (MantelHaenszel.DifferenceVariance method : MantelHaenszel.DifferenceVariance.values()) {
                hold(() -> MantelHaenszel.riskDifference(strata, 0.95, method), what + " " + method);
            }
            holdTest(() -> MantelHaenszel.chiSquare(strata, true), what);
            holdTest(() -> Homogeneity.breslowDayTarone(strata), what);
            holdTest(() -> Homogeneity.woolf(strata, Homogeneity.Measure.ODDS_RATIO), what);
            holdTest(() -> Homogeneity.woolf(strata, Homogeneity.Measure.RISK_RATIO), what);
            holdTest(() -> Homogeneity.woolfHaldaneAnscombe(strata), what);
        }
        assertTrue(answered > 1000 && refused > 100, answered + " answered, " + refused + " refused");
    }

    @Test
    void everyShrunkenIntervalIsOrderedOrRefused() {
        Random random = new Random(20278);
        for (int draw = 0; draw < 200; draw++) {
            int groups = 1 + random.nextInt(7);
            int[] sizes = random.ints(groups, 0, draw % 4 == 0 ? 4 : 60).toArray();
            int[] cases = new int[groups];
            double[] times = new double[groups];
            for (int i = 0; i < groups; i++) {
                cases[i] = random.nextInt(sizes[i] + 1);
                times[i] = sizes[i] + 0.5;
            }
            String what = "seed 20278, draw " + draw;
            for (int i = 0; i < groups; i++) {
                int group = i;
                hold(() -> BetaBinomial.fit(cases, sizes).shrunken(0.95).get(group), what);
                hold(() -> GammaPoisson.fit(cases, times).shrunken(0.95).get(group), what);
            }
            holdRanks(() -> BetaBinomial.fit(cases, sizes).ranks(), groups, what);
            holdRanks(() -> GammaPoisson.fit(cases, times).ranks(), groups, what);
        }
        assertTrue(answered > 1000 && refused > 10, answered + " answered, " + refused + " refused");
    }

    private static int[] cells(Random random) {
        int[] cells = new int[4];
        for (int i = 0; i < 4; i++) {
            cells[i] = COUNTS[random.nextInt(COUNTS.length)];
        }
        return cells;
    }

    private void hold(Supplier<Interval> estimate, String what) {
        try {
            Interval interval = estimate.get();
            answered++;
            double slack = 1e-9 * Math.abs(interval.value());
            assertTrue(interval.low() <= interval.value() + slack, what + ": " + interval);
            assertTrue(interval.value() <= interval.high() + slack, what + ": " + interval);
            assertTrue(Double.isFinite(interval.low()), what + ": " + interval);
        } catch (CannotEstimate reason) {
            assertSentence(reason);
        }
    }

    private void holdTest(Supplier<TestResult> test, String what) {
        try {
            TestResult result = test.get();
            answered++;
            assertTrue(result.statistic() >= 0 && result.pValue() >= 0 && result.pValue() <= 1, what + ": " + result);
        } catch (CannotEstimate reason) {
            assertSentence(reason);
        }
    }

    private void holdRanks(Supplier<PosteriorRanks> ranks, int groups, String what) {
        try {
            PosteriorRanks result = ranks.get();
            answered++;
            double chances =
                    result.probabilityLargest().stream().mapToDouble(p -> p).sum();
            double sum = result.expectedRank().stream().mapToDouble(r -> r).sum();
            assertTrue(Math.abs(chances - 1) < 1e-6, what + ": chances add up to " + chances);
            assertTrue(Math.abs(sum - groups * (groups + 1) / 2.0) < 1e-5, what + ": ranks add up to " + sum);
        } catch (CannotEstimate reason) {
            assertSentence(reason);
        }
    }

    private void assertSentence(CannotEstimate reason) {
        refused++;
        assertTrue(reason.getMessage().contains(" cannot be estimated because "), reason.getMessage());
        assertTrue(reason.getMessage().endsWith("."), reason.getMessage());
        assertFalse(reason.getMessage().contains("search ran beyond"), reason.getMessage());
    }
}
