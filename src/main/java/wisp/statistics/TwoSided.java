package wisp.statistics;

import org.apache.commons.statistics.distribution.NormalDistribution;

/** Two-sided quantiles and tail probabilities of the standard normal distribution. */
final class TwoSided {
    private static final NormalDistribution STANDARD = NormalDistribution.of(0, 1);

    private TwoSided() {}

    /** The z with P(-z &lt; Z &lt; z) = level. */
    static double quantile(double level) {
        if (!(level > 0 && level < 1)) {
            throw new CannotEstimate("An interval", "its confidence level is " + level + " and not between 0 and 1");
        }
        return STANDARD.inverseSurvivalProbability((1 - level) / 2);
    }

    /** P(|Z| &gt;= |z|). */
    static double tail(double z) {
        return Math.min(1, 2 * STANDARD.survivalProbability(Math.abs(z)));
    }
}
