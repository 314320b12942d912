package wisp.statistics;

/**
 * The restricted mean survival time: the area under a Kaplan-Meier curve from 0 to tau.
 *
 * <p>Variance: sum over event times of A(ti)^2 di / (ni (ni - di)), A(t) the area from t to tau (Kaplan and Meier 1958;
 * Klein and Moeschberger 2003, eq. 4.5.2, without the n / (n - 1) some programs add). Agrees with R's
 * {@code summary(survfit, rmean = tau)}.
 */
public final class RestrictedMean {
    private RestrictedMean() {}

    /** An area under the curve and its standard error, both in the unit of time. */
    public record Area(double value, double standardError) {}

    /**
     * The restricted mean to {@code tau} with its normal interval, cut at 0 and tau.
     *
     * @throws CannotEstimate when follow-up ends before tau with lives still surviving
     */
    public static Interval of(SurvivalCurve curve, double tau) {
        Area area = area(curve, tau);
        double half = TwoSided.quantile(curve.level()) * area.standardError;
        double low = Math.max(0, area.value - half);
        double high = Math.min(tau, area.value + half);
        return new Interval(area.value, low, high, curve.level(), "restricted mean to " + tau + ", normal");
    }

    /** The restricted mean to {@code tau} with its standard error; throws as {@link #of}. */
    public static Area area(SurvivalCurve curve, double tau) {
        String what = "The restricted mean";
        Require.positive(what, "tau", tau);
        int last = StepFunction.lastAtOrBefore(curve.times(), tau);
        double end = curve.followUp().last();
        if (end < tau && curve.survival()[last] > 0) {
            throw new CannotEstimate(what, "follow-up ends at " + end + ", before " + tau + ", with lives surviving");
        }
        double area = 0;
        double variance = 0;
        double until = tau;
        for (int i = last; i >= 0; i--) {
            area += curve.survival()[i] * (until - curve.times()[i]);
            until = curve.times()[i];
            double n = curve.atRisk()[i];
            double d = curve.events()[i];
            variance += n > d ? area * area * d / (n * (n - d)) : 0;
        }
        return new Area(area + until, Math.sqrt(variance));
    }
}
