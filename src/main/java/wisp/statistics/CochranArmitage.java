package wisp.statistics;

import java.util.HashMap;
import java.util.Map;
import java.util.Random;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * The Cochran-Armitage test for a linear trend of proportions over ordered groups.
 *
 * <p>With cases xi of ni at score wi, T = sum wi xi; given the total of cases its expectation is p sum wi ni and its
 * variance, with N and not N - 1 below, p (1 - p) (sum ni wi^2 - (sum ni wi)^2 / N) (Cochran 1954, Biometrics 10:417;
 * Armitage 1955, Biometrics 11:375). Same chi-square as R's {@code prop.trend.test}. The exact and the permutation test
 * refer T to its distribution given both margins; two-sided they add the outcomes whose T lies at least as far from its
 * expectation.
 */
public final class CochranArmitage {
    private static final String WHAT = "The Cochran-Armitage trend";
    private static final int STATES_MAX = 2_000_000;

    private CochranArmitage() {}

    /**
     * The test by the normal approximation, without continuity correction.
     *
     * @throws CannotEstimate when all or none are cases, all scores are one, or a count is impossible
     */
    public static TrendTest normal(int[] cases, int[] totals, double[] scores) {
        Margins margins = Margins.of(cases, totals, scores);
        double z = (margins.observed - margins.expected) / margins.deviation;
        double upper = NormalDistribution.of(0, 1).survivalProbability(z);
        return new TrendTest(z, TwoSided.tail(z), upper, "Cochran-Armitage, normal approximation");
    }

    /**
     * The exact conditional test, by convolution of the groups' hypergeometric distributions.
     *
     * @throws CannotEstimate as {@link #normal}, and when T takes too many values to list
     */
    public static TrendTest exact(int[] cases, int[] totals, double[] scores) {
        Margins margins = Margins.of(cases, totals, scores);
        double upper = 0;
        double far = 0;
        for (Map.Entry<Long, Double> outcome :
                distribution(margins, totals, scores).entrySet()) {
            double t = outcome.getKey() * margins.grain;
            upper += t >= margins.observed - margins.grain * 10 ? outcome.getValue() : 0;
            far += margins.asFar(t) ? outcome.getValue() : 0;
        }
        double z = (margins.observed - margins.expected) / margins.deviation;
        return new TrendTest(z, Math.min(1, far), Math.min(1, upper), "Cochran-Armitage, exact");
    }

    /**
     * The permutation test by {@code draws} random shuffles of the cases from {@code seed}; p is (1 + those as far) /
     * (1 + draws).
     */
    public static TrendTest permutation(int[] cases, int[] totals, double[] scores, int draws, long seed) {
        Margins margins = Margins.of(cases, totals, scores);
        Random random = new Random(seed);
        int upper = 0;
        int far = 0;
        for (int draw = 0; draw < draws; draw++) {
            double t = shuffled(margins, totals, scores, random);
            upper += t >= margins.observed - margins.grain * 10 ? 1 : 0;
            far += margins.asFar(t) ? 1 : 0;
        }
        double z = (margins.observed - margins.expected) / margins.deviation;
        String method = "Cochran-Armitage, " + draws + " permutations from seed " + seed;
        return new TrendTest(z, (1.0 + far) / (1 + draws), (1.0 + upper) / (1 + draws), method);
    }

    private static double shuffled(Margins margins, int[] totals, double[] scores, Random random) {
        int left = margins.all;
        int casesLeft = margins.cases;
        double t = 0;
        for (int group = 0; group < totals.length; group++) {
            for (int member = 0; member < totals[group]; member++) {
                if (random.nextInt(left--) < casesLeft) {
                    casesLeft--;
                    t += scores[group];
                }
            }
        }
        return t;
    }

    private static Map<Long, Double> distribution(Margins margins, int[] totals, double[] scores) {
        LogFactorials logFactorials = new LogFactorials(margins.all);
        Map<Integer, Map<Long, Double>> states = Map.of(margins.cases, Map.of(0L, 1.0));
        int left = margins.all;
        for (int group = 0; group < totals.length; group++) {
            Map<Integer, Map<Long, Double>> next = new HashMap<>();
            int inGroup = totals[group];
            int after = left - inGroup;
            int size = 0;
            for (Map.Entry<Integer, Map<Long, Double>> state : states.entrySet()) {
                int casesLeft = state.getKey();
                for (int x = Math.max(0, casesLeft - after); x <= Math.min(inGroup, casesLeft); x++) {
                    double p = logFactorials.hypergeometric(x, inGroup, casesLeft, left);
                    long shift = Math.round(x * scores[group] / margins.grain);
                    Map<Long, Double> target = next.computeIfAbsent(casesLeft - x, key -> new HashMap<>());
                    size -= target.size();
                    state.getValue().forEach((t, q) -> target.merge(t + shift, p * q, Double::sum));
                    size += target.size();
                }
                if (size > STATES_MAX) {
                    throw new CannotEstimate(
                            WHAT, "the exact distribution has too many values; take the permutation test instead");
                }
            }
            states = next;
            left = after;
        }
        return states.get(0);
    }

    /** Totals, moments and the grain to which values of T are told apart. */
    private record Margins(int cases, int all, double observed, double expected, double deviation, double grain) {

        static Margins of(int[] cases, int[] totals, double[] scores) {
            if (cases.length != totals.length || cases.length != scores.length || cases.length < 2) {
                throw new CannotEstimate(WHAT, "it needs equally many cases, totals and scores, of two groups or more");
            }
            int sumCases = 0;
            int sumAll = 0;
            double observed = 0;
            double sumScore = 0;
            double sumSquare = 0;
            double largest = 0;
            for (int i = 0; i < cases.length; i++) {
                if (cases[i] < 0 || cases[i] > totals[i] || !Double.isFinite(scores[i])) {
                    throw new CannotEstimate(
                            WHAT,
                            "group " + (i + 1) + " has " + cases[i] + " cases of " + totals[i] + " at score "
                                    + scores[i]);
                }
                Require.size(WHAT, "the score of group " + (i + 1), scores[i]);
                sumCases += cases[i];
                sumAll += totals[i];
                observed += scores[i] * cases[i];
                sumScore += scores[i] * totals[i];
                sumSquare += scores[i] * scores[i] * totals[i];
                largest = Math.max(largest, Math.abs(scores[i]));
            }
            if (sumCases == 0 || sumCases == sumAll) {
                throw new CannotEstimate(WHAT, "the outcome does not vary: " + sumCases + " cases of " + sumAll);
            }
            double p = (double) sumCases / sumAll;
            double spread = sumSquare - sumScore * sumScore / sumAll;
            if (spread <= 1e-12 * sumSquare) {
                throw new CannotEstimate(WHAT, "all groups have the same score");
            }
            return new Margins(
                    sumCases, sumAll, observed, p * sumScore, Math.sqrt(p * (1 - p) * spread), largest * 1e-10);
        }

        boolean asFar(double t) {
            return Math.abs(t - expected) >= Math.abs(observed - expected) - grain * 10 * Math.max(1, cases);
        }
    }

    /** Logarithms of factorials, and the hypergeometric probability from them. */
    private static final class LogFactorials {
        private final double[] log;

        LogFactorials(int n) {
            log = new double[n + 1];
            for (int i = 2; i <= n; i++) {
                log[i] = log[i - 1] + Math.log(i);
            }
        }

        double hypergeometric(int x, int drawn, int cases, int all) {
            return Math.exp(choose(drawn, x) + choose(all - drawn, cases - x) - choose(all, cases));
        }

        private double choose(int n, int k) {
            return log[n] - log[k] - log[n - k];
        }
    }
}
