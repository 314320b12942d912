package wisp.statistics;

import org.apache.commons.statistics.distribution.NormalDistribution;

/** Two-sided quantiles and tail probabilities of the standard normal distribution. */
final class TwoSided {
    private static final NormalDistribution STANDARD = NormalDistribution.of(0, 1);

    private TwoSided() {}

    /** The z with P(-z &lt; Z &lt; z) = level. */
    static double quantile(double level) {
        return Require.normalQuantile("The interval", level);
    }

    /** P(|Z| &gt;= |z|). */
    static double tail(double z) {
        return Math.min(1, 2 * STANDARD.survivalProbability(Math.abs(z)));
    }
}
