package wisp.statistics;

import org.apache.commons.statistics.distribution.TDistribution;

/**
 * The coefficients of a regression with their covariance, on the scale of the linear predictor (log odds, log rate).
 *
 * @param values estimates, one a column of the design
 * @param covariance their covariance matrix
 * @param method how both were estimated, such as "maximum likelihood"
 */
public record Coefficients(double[] values, double[][] covariance, String method) {

    /** Standard error of the {@code j}-th coefficient, counted from 0. */
    public double standardError(int j) {
        return Math.sqrt(covariance[j][j]);
    }

    /** Estimate over standard error. */
    public double z(int j) {
        return values[j] / standardError(j);
    }

    /** Two-sided p-value of the {@code j}-th coefficient being 0, by the normal distribution (Wald 1943). */
    public double pValue(int j) {
        return TwoSided.tail(z(j));
    }

    /** The Wald interval of the {@code j}-th coefficient by the normal distribution. */
    public Interval wald(int j, double level) {
        return symmetric(j, TwoSided.quantile(level), level, "Wald");
    }

    /**
     * The Wald interval by Student's t, for a covariance that rests on few clusters: commonly their number less one
     * (Cameron and Miller 2015, J Human Resources 50:317, section VI.D).
     */
    public Interval waldT(int j, double level, double degreesOfFreedom) {
        TwoSided.quantile(level);
        Require.positive("The interval", "the number of degrees of freedom", degreesOfFreedom);
        double t = TDistribution.of(degreesOfFreedom).inverseSurvivalProbability((1 - level) / 2);
        return symmetric(j, t, level, "Wald, t on " + degreesOfFreedom + " degrees of freedom");
    }

    /**
     * The odds ratio (or rate ratio, of a log-linear fit) of one unit of column {@code j}: exp of the Wald interval.
     */
    public Interval ratio(int j, double level) {
        Interval log = wald(j, level);
        return new Interval(Math.exp(log.value()), Math.exp(log.low()), Math.exp(log.high()), level, log.method());
    }

    private Interval symmetric(int j, double quantile, double level, String name) {
        double half = quantile * standardError(j);
        return new Interval(values[j], values[j] - half, values[j] + half, level, name + ", " + method);
    }
}
