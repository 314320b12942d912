package wisp.statistics;

import org.apache.commons.statistics.distribution.BinomialDistribution;

/**
 * Control limits of a funnel plot of proportions about a target: between which proportions a group of a given size
 * falls with a given probability if its true risk is the target (Spiegelhalter 2005 Stat Med 24:1185, appendix A.1.1).
 *
 * <p>With r the smallest count with P(X ≤ r) ≥ p, the plain limit is r/n. Counts are few in small groups, so that limit
 * jumps; the paper draws (r - a)/n with a = (P(X ≤ r) - p) / P(X = r), which moves smoothly. The interpolated lower
 * limit falls below 0 where r = 0, and is cut off there: no group of that size can be low enough to signal.
 *
 * @param low lower limit, a proportion
 * @param high upper limit, a proportion
 * @param probability probability between the limits, such as 0.95 or 0.998
 * @param method the textbook name of the method
 */
public record FunnelLimits(double low, double high, double probability, String method) {

    private static final String WHAT = "The funnel's limits";

    /** How a limit is placed between two counts. */
    public enum Method {
        /** Spiegelhalter 2005, appendix A.1.1, cut off at 0 and 1. */
        EXACT_BINOMIAL_INTERPOLATED("exact binomial, interpolated"),
        /** The binomial quantile over n, always a proportion that a group can have. */
        EXACT_BINOMIAL_QUANTILE("exact binomial quantile");

        private final String label;

        Method(String label) {
            this.label = label;
        }

        /** The name in {@link FunnelLimits#method()}. */
        public String label() {
            return label;
        }
    }

    /**
     * The limits for a group of n.
     *
     * @param target the risk tested, strictly between 0 and 1; often the pooled one
     * @param probability probability between the limits; 0.95 and 0.998 are about two and three standard deviations
     * @throws CannotEstimate if n is below 1, or target or probability are not in (0, 1)
     */
    public static FunnelLimits of(int n, double target, double probability, Method method) {
        Require.share(WHAT, 0, n);
        Require.fraction(WHAT, "the target", target);
        Require.fraction(WHAT, "the probability between the limits", probability);
        double tail = (1 - probability) / 2;
        return new FunnelLimits(
                Math.max(0, limit(n, target, tail, method)),
                Math.min(1, limit(n, target, 1 - tail, method)),
                probability,
                method.label());
    }

    /**
     * The group's distance from the target in standard errors under the target, (x/n - p) / √(p(1-p)/n).
     *
     * @throws CannotEstimate if n is below 1, cases are not in 0..n or the target is not in (0, 1)
     */
    public static double z(int cases, int n, double target) {
        Require.share(WHAT, cases, n);
        Require.fraction(WHAT, "the target", target);
        return ((double) cases / n - target) / Math.sqrt(target * (1 - target) / n);
    }

    /** The limit of one tail, before it is cut off at 0 and 1. */
    static double limit(int n, double target, double p, Method method) {
        BinomialDistribution binomial = BinomialDistribution.of(n, target);
        int r = binomial.inverseCumulativeProbability(p);
        return switch (method) {
            case EXACT_BINOMIAL_QUANTILE -> (double) r / n;
            case EXACT_BINOMIAL_INTERPOLATED ->
                (r - (binomial.cumulativeProbability(r) - p) / binomial.probability(r)) / n;
        };
    }
}
