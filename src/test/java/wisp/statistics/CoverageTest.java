package wisp.statistics;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * How often the 95 % intervals hold the truth in small invented samples. The tolerance is four binomial standard errors
 * of the 4,000 samples (0.0138) on either side of a band, and the band is what the family is known to reach at that
 * size: an interval that rests on a normal approximation is not exact at n = 25, and the test says how far off it may
 * be.
 */
class CoverageTest {
    private static final int SAMPLES = 4000;
    private static final double FOUR_SE = 4 * Math.sqrt(0.95 * 0.05 / SAMPLES);

    @ParameterizedTest
    @CsvSource({
        "LOG_LOG, 0.94, 0.97",
        "LOGIT, 0.94, 0.98",
        "ARCSINE, 0.93, 0.96",
        "LOG, 0.92, 0.96",
        "PLAIN, 0.90, 0.95" // known to fall short at small n: Borgan and Liestol 1990
    })
    void kaplanMeierOf25LivesAtSurvivalThreeQuarters(CurveInterval scale, double low, double high) {
        double truth = 0.75;
        holds("Kaplan-Meier " + scale, 101, truth, low, high, random -> {
            Sample sample = Sample.drawn(random, 25, -Math.log(truth), 0, 0.3);
            return KaplanMeier.of(sample.times, sample.anyEvent(), scale, 0.95).at(1);
        });
    }

    @ParameterizedTest
    @CsvSource({"0.9, 0.93, 0.98", "0.5, 0.93, 0.97", "0.25, 0.93, 0.97"})
    void kaplanMeierLogLogOf25LivesOverTheRange(double truth, double low, double high) {
        holds("Kaplan-Meier log(-log) at " + truth, 102, truth, low, high, random -> {
            Sample sample = Sample.drawn(random, 25, -Math.log(truth), 0, 0.3);
            return KaplanMeier.of(sample.times, sample.anyEvent()).at(1);
        });
    }

    @Test
    void aalenJohansenOf40LivesAtOneFifth() {
        // rates 0.3 and 0.4: F1(1) = 3/7 (1 - exp(-0.7))
        double truth = 3.0 / 7 * (1 - Math.exp(-0.7));
        holds("Aalen-Johansen", 103, truth, 0.94, 0.97, random -> {
            Sample sample = Sample.drawn(random, 40, 0.3, 0.4, 0.3);
            return AalenJohansen.of(sample.times, sample.causes, 2).get(0).at(1);
        });
    }

    @Test
    void nelsonAalenOf40LivesAtHazardOneHalf() {
        holds("Nelson-Aalen log", 104, 0.5, 0.93, 0.97, random -> {
            Sample sample = Sample.drawn(random, 40, 0.5, 0, 0.3);
            return NelsonAalen.of(sample.times, sample.anyEvent()).at(1);
        });
    }

    @Test
    void restrictedMeanOf40Lives() {
        double truth = (1 - Math.exp(-0.5)) / 0.5;
        holds("restricted mean", 105, truth, 0.92, 0.96, random -> {
            Sample sample = Sample.drawn(random, 40, 0.5, 0, 0.1);
            SurvivalCurve curve = KaplanMeier.of(sample.times, sample.anyEvent());
            return curve.followUp().last() < 1 ? null : RestrictedMean.of(curve, 1);
        });
    }

    @Test
    void logisticWaldAndProfileOf80Rows() {
        Function<Random, RegressionFit> fit = random -> {
            boolean[] outcomes = new boolean[80];
            double[][] design = new double[80][];
            for (int i = 0; i < 80; i++) {
                design[i] = new double[] {1, i % 2, random.nextGaussian()};
                double eta = -1 + 0.8 * design[i][1] + 0.5 * design[i][2];
                outcomes[i] = random.nextDouble() < 1 / (1 + Math.exp(-eta));
            }
            return Logistic.fit(outcomes, design);
        };
        holds(
                "logistic Wald",
                106,
                0.8,
                0.94,
                0.97,
                random -> fit.apply(random).coefficients().wald(1, 0.95));
        holds(
                "logistic profile",
                106,
                0.8,
                0.93,
                0.96,
                random -> fit.apply(random).profile(1, 0.95));
    }

    @Test
    void poissonProfileOfTwoRates() {
        holds("Poisson profile", 107, Math.log(2), 0.93, 0.97, random -> {
            double[] counts = {poisson(random, 12), poisson(random, 24)};
            double[] exposure = {100, 100};
            return counts[0] * counts[1] == 0
                    ? null
                    : Poisson.fit(counts, exposure, new double[][] {{1, 0}, {1, 1}})
                            .profile(1, 0.95);
        });
    }

    @Test
    void clusterRobustByStudentsTWith24Clusters() {
        // Rows of a cluster share a normal shift; the marginal log odds of 0 is 0 by symmetry
        holds("cluster-robust HC1 with t", 108, 0, 0.92, 0.96, random -> {
            int clusters = 24;
            int size = 8;
            boolean[] outcomes = new boolean[clusters * size];
            int[] labels = new int[outcomes.length];
            double[][] design = new double[outcomes.length][];
            for (int c = 0; c < clusters; c++) {
                double shift = random.nextGaussian();
                for (int i = c * size; i < (c + 1) * size; i++) {
                    labels[i] = c;
                    design[i] = new double[] {1};
                    outcomes[i] = random.nextDouble() < 1 / (1 + Math.exp(-shift));
                }
            }
            RegressionFit fit = Logistic.fit(outcomes, design);
            return ClusterRobust.of(fit, labels, ClusterRobust.SmallSample.CLUSTERS_AND_COLUMNS)
                    .waldT(0, 0.95, clusters - 1);
        });
    }

    @Test
    void standardisedRiskDifferenceOf100Rows() {
        // One covariate of two levels, half the rows each, fixed: the marginal risks are means of two logistic values
        double truth = (logistic(0.3) + logistic(-0.7) - logistic(-0.5) - logistic(-1.5)) / 2;
        holds("g-computation difference", 109, truth, 0.93, 0.96, random -> {
            boolean[] outcomes = new boolean[100];
            double[][] design = new double[100][];
            for (int i = 0; i < 100; i++) {
                design[i] = new double[] {1, i % 2, i / 2 % 2};
                outcomes[i] = random.nextDouble() < logistic(-0.5 + 0.8 * design[i][1] - design[i][2]);
            }
            return GComputation.of(
                            Logistic.fit(outcomes, design).coefficients(),
                            Design.with(design, 1, 1),
                            Design.with(design, 1, 0),
                            0.95)
                    .difference();
        });
    }

    private static double logistic(double eta) {
        return 1 / (1 + Math.exp(-eta));
    }

    static int poisson(Random random, double mean) {
        int count = 0;
        for (double t = -Math.log(1 - random.nextDouble()); t < mean; t -= Math.log(1 - random.nextDouble())) {
            count++;
        }
        return count;
    }

    /** Draws the samples; those for which no interval can be had (null) do not count. */
    static void holds(
            String family, long seed, double truth, double low, double high, Function<Random, Interval> estimate) {
        Random random = new Random(seed);
        int covered = 0;
        int counted = 0;
        for (int sample = 0; sample < SAMPLES; sample++) {
            Interval interval = estimate.apply(random);
            if (interval != null) {
                counted++;
                covered += interval.low() <= truth && truth <= interval.high() ? 1 : 0;
            }
        }
        double coverage = (double) covered / counted;
        System.out.println(family + ": coverage " + coverage + " of " + counted + ", seed " + seed);
        assertTrue(counted > 0.9 * SAMPLES, family + " gave too few intervals: " + counted);
        assertTrue(
                coverage > low - FOUR_SE && coverage < high + FOUR_SE,
                family + " covers " + coverage + ", outside " + low + " to " + high);
    }

    /** Lives with exponential rates of two causes and of censoring. */
    record Sample(double[] times, int[] causes) {

        static Sample drawn(Random random, int n, double rate1, double rate2, double censoring) {
            Sample sample = new Sample(new double[n], new int[n]);
            double all = rate1 + rate2 + censoring;
            for (int i = 0; i < n; i++) {
                sample.times[i] = -Math.log(1 - random.nextDouble()) / all;
                double which = random.nextDouble() * all;
                sample.causes[i] = which < rate1 ? 1 : which < rate1 + rate2 ? 2 : 0;
            }
            return sample;
        }

        boolean[] anyEvent() {
            boolean[] events = new boolean[causes.length];
            for (int i = 0; i < events.length; i++) {
                events[i] = causes[i] > 0;
            }
            return events;
        }
    }
}
