package wisp.statistics;

import static wisp.statistics.CoverageTest.holds;
import static wisp.statistics.CoverageTest.poisson;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/** Coverage by simulation, as {@link CoverageTest}, of the stratified, shrunken and modelled 95 % intervals. */
class ModelCoverageTest {

    @Test
    void mantelHaenszelOfFourSmallStrata() {
        double[] base = {0.15, 0.25, 0.35, 0.2};
        Function<Random, List<TwoByTwoTable>> ratio = random -> strata(random, base, p -> 1.6 * p);
        Function<Random, List<TwoByTwoTable>> odds = random -> strata(random, base, p -> 2 * p / (1 + p));
        Function<Random, List<TwoByTwoTable>> difference = random -> strata(random, base, p -> p + 0.15);
        holds(
                "Mantel-Haenszel risk ratio",
                121,
                1.6,
                0.94,
                0.97,
                random -> unlessRefused(ratio.apply(random), strata -> MantelHaenszel.riskRatio(strata, 0.95)));
        holds(
                "Mantel-Haenszel odds ratio",
                122,
                2,
                0.94,
                0.97,
                random -> unlessRefused(odds.apply(random), strata -> MantelHaenszel.oddsRatio(strata, 0.95)));
        for (MantelHaenszel.DifferenceVariance variance : MantelHaenszel.DifferenceVariance.values()) {
            holds(
                    "Mantel-Haenszel risk difference " + variance,
                    123,
                    0.15,
                    0.92,
                    0.96,
                    random -> unlessRefused(
                            difference.apply(random), strata -> MantelHaenszel.riskDifference(strata, 0.95, variance)));
        }
    }

    @Test
    void logisticAfterFirthsPenaltyOf30Rows() {
        holds("logistic Firth, penalised profile", 124, 1, 0.93, 0.97, random -> {
            boolean[] outcomes = new boolean[30];
            double[][] design = new double[30][];
            for (int i = 0; i < 30; i++) {
                design[i] = new double[] {1, i % 2};
                outcomes[i] = random.nextDouble() < 1 / (1 + Math.exp(1 - design[i][1]));
            }
            return unlessRefused(design, d -> Logistic.firth(outcomes, d).profile(1, 0.95));
        });
    }

    @Test
    void coxOf50Lives() {
        holds("Cox Wald", 125, Math.log(2), 0.93, 0.97, random -> {
            double[] times = new double[50];
            boolean[] events = new boolean[50];
            double[][] design = new double[50][];
            for (int i = 0; i < 50; i++) {
                design[i] = new double[] {i % 2};
                double time = -Math.log(1 - random.nextDouble()) / (i % 2 == 1 ? 2 : 1);
                times[i] = Math.min(1.5, time);
                events[i] = time <= 1.5;
            }
            return CoxRegression.fit(times, events, design).coefficients().wald(0, 0.95);
        });
    }

    @Test
    void proportionalOddsOf60Rows() {
        holds("proportional odds Wald", 126, 1, 0.93, 0.97, random -> {
            int[] categories = new int[60];
            double[][] design = new double[60][];
            for (int i = 0; i < 60; i++) {
                design[i] = new double[] {i % 2};
                double u = random.nextDouble();
                double latent = design[i][0] + Math.log(u / (1 - u));
                categories[i] = latent < -0.5 ? 0 : latent < 1 ? 1 : 2;
            }
            return unlessRefused(
                    design,
                    d -> ProportionalOdds.fit(categories, d).coefficients().wald(0, 0.95));
        });
    }

    @Test
    void estimatingEquationsOf30ClustersByStudentsT() {
        holds("GEE with t", 127, 0, 0.92, 0.96, random -> {
            boolean[] outcomes = new boolean[180];
            int[] clusters = new int[180];
            double[][] design = new double[180][];
            double shift = 0;
            for (int i = 0; i < 180; i++) {
                shift = i % 6 == 0 ? random.nextGaussian() : shift;
                clusters[i] = i / 6;
                design[i] = new double[] {1};
                outcomes[i] = random.nextDouble() < 1 / (1 + Math.exp(-shift));
            }
            return GeneralisedEstimatingEquations.exchangeable(outcomes, clusters, design)
                    .coefficients()
                    .waldT(0, 0.95, 29);
        });
    }

    @Test
    void kaplanMeierOf60LivesThatEnterLate() {
        holds("Kaplan-Meier left-truncated", 128, Math.exp(-1), 0.92, 0.97, random -> {
            double[] entries = new double[60];
            double[] times = new double[60];
            boolean[] events = new boolean[60];
            for (int i = 0; i < 60; i++) {
                do {
                    entries[i] = i < 20 ? 0 : 0.6 * random.nextDouble();
                    times[i] = -Math.log(1 - random.nextDouble());
                } while (times[i] <= entries[i]);
                events[i] = times[i] < 2;
                times[i] = Math.min(2, times[i]);
            }
            return KaplanMeier.leftTruncated(entries, times, events).at(1);
        });
    }

    @Test
    void medianSurvivalOf40Lives() {
        holds("median survival, Brookmeyer-Crowley", 129, Math.log(2), 0.93, 0.98, random -> {
            CoverageTest.Sample sample = CoverageTest.Sample.drawn(random, 40, 1, 0, 0.3);
            return unlessRefused(
                    sample, s -> KaplanMeier.of(s.times(), s.anyEvent()).quantile(0.5));
        });
    }

    // The fitted spread is taken as known, so that some 90 % is what 20 groups of 30 reach (Morris 1983 J Am Stat Assoc
    // 78:47 on empirical Bayes intervals); the pages say so.
    @Test
    void shrunkenSharesAndRatesOfTwentyGroups() {
        double[] truth = new double[1];
        holds("beta-binomial, own share less truth", 130, 0, 0.86, 0.95, random -> {
            int[] cases = new int[20];
            int[] sizes = new int[20];
            for (int i = 0; i < 20; i++) {
                double share = betaOfTwoAndSix(random);
                truth[0] = i == 0 ? share : truth[0];
                sizes[i] = 30;
                for (int k = 0; k < 30; k++) {
                    cases[i] += random.nextDouble() < share ? 1 : 0;
                }
            }
            return less(BetaBinomial.fit(cases, sizes).shrunken(0.95).get(0), truth[0]);
        });
        holds("gamma-Poisson, own rate less truth", 131, 0, 0.86, 0.95, random -> {
            int[] events = new int[20];
            double[] times = new double[20];
            for (int i = 0; i < 20; i++) {
                double rate = -Math.log((1 - random.nextDouble()) * (1 - random.nextDouble())) / 2;
                truth[0] = i == 0 ? rate : truth[0];
                times[i] = 6;
                events[i] = poisson(random, 6 * rate);
            }
            return less(GammaPoisson.fit(events, times).shrunken(0.95).get(0), truth[0]);
        });
    }

    /** The second smallest of seven uniform numbers. */
    private static double betaOfTwoAndSix(Random random) {
        double[] uniform = random.doubles(7).toArray();
        Arrays.sort(uniform);
        return uniform[1];
    }

    private static Interval less(Interval interval, double truth) {
        return new Interval(
                interval.value() - truth,
                interval.low() - truth,
                interval.high() - truth,
                interval.level(),
                interval.method());
    }

    private static List<TwoByTwoTable> strata(
            Random random, double[] base, java.util.function.DoubleUnaryOperator exposedRisk) {
        List<TwoByTwoTable> strata = new ArrayList<>();
        for (double p : base) {
            strata.add(TwoByTwoTable.ofGroups(
                    binomial(random, 20, exposedRisk.applyAsDouble(p)), 20, binomial(random, 25, p), 25));
        }
        return strata;
    }

    private static int binomial(Random random, int n, double p) {
        int cases = 0;
        for (int i = 0; i < n; i++) {
            cases += random.nextDouble() < p ? 1 : 0;
        }
        return cases;
    }

    private static <T> Interval unlessRefused(T sample, Function<T, Interval> estimate) {
        try {
            return estimate.apply(sample);
        } catch (CannotEstimate refused) {
            return null;
        }
    }
}
