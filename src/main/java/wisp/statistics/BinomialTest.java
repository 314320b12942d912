package wisp.statistics;

import org.apache.commons.statistics.distribution.BinomialDistribution;

/**
 * The exact test of one proportion against a given one: Conover (1971) Practical Nonparametric Statistics, p. 97. The
 * two-sided p-value is the sum of the probabilities of all counts that are not more probable than the observed one, as
 * R's {@code binom.test}, with the same allowance of 1e-7 for ties that rounding would split.
 */
public final class BinomialTest {

    private static final String WHAT = "The binomial test";

    private static final double TIE = 1 + 1e-7;

    private BinomialTest() {}

    /**
     * The two-sided exact p-value.
     *
     * @param probability the proportion tested, 0 to 1
     * @throws CannotEstimate if n is below 1, cases are not in 0..n or the probability is not in 0..1
     */
    public static double twoSided(int cases, int n, double probability) {
        Require.share(WHAT, cases, n);
        if (!(probability >= 0 && probability <= 1)) {
            throw new CannotEstimate(WHAT, "the proportion tested, " + probability + ", is not between 0 and 1");
        }
        BinomialDistribution binomial = BinomialDistribution.of(n, probability);
        double observed = binomial.probability(cases) * TIE;
        double sum = 0;
        for (int k = 0; k <= n; k++) {
            double p = binomial.probability(k);
            if (p <= observed) {
                sum += p;
            }
        }
        return Math.min(1, sum);
    }
}
