package wisp.statistics;

/**
 * A Nelson-Aalen cumulative hazard: a right-continuous step function of time with its counts and standard errors.
 *
 * @param times distinct exit times (events and censorings), ascending, in the unit given
 * @param atRisk lives at risk just before each time
 * @param events events at each time
 * @param censored lives censored at each time
 * @param cumulativeHazard H(t) from each time on
 * @param standardErrors standard errors of H(t)
 * @param followUp the observed spans
 * @param level confidence level of the pointwise intervals
 */
public record CumulativeHazardCurve(
        double[] times,
        int[] atRisk,
        int[] events,
        int[] censored,
        double[] cumulativeHazard,
        double[] standardErrors,
        FollowUp followUp,
        double level) {

    /**
     * H at {@code time} with its log-transformed interval H exp(+-z se / H) (Andersen, Borgan, Gill and Keiding 1993,
     * eq. 4.1.14). Where H is 0 the upper limit is -log(1 - u), with u the upper Wilson limit of 0 events among those
     * still followed.
     *
     * @throws CannotEstimate when nobody was followed to {@code time} and no event came before
     */
    public Interval at(double time) {
        int i = StepFunction.lastAtOrBefore(times, time);
        double z = TwoSided.quantile(level);
        double hazard = i < 0 ? 0 : cumulativeHazard[i];
        if (hazard > 0) {
            double factor = Math.exp(z * standardErrors[i] / hazard);
            Interval there = new Interval(hazard, hazard / factor, hazard * factor, level, "Nelson-Aalen, log");
            return StepFunction.held(there, time, followUp);
        }
        int known = followUp.atRiskAt(time);
        Interval none = CurveInterval.LOG_LOG.ofIncidence(0, 0, known, level, "Nelson-Aalen");
        return new Interval(0, 0, -Math.log1p(-none.high()), level, none.method());
    }

    /** The lives at risk just before {@code time}: those whose follow-up reached it. */
    public int atRiskAt(double time) {
        return followUp.atRiskAt(time);
    }
}
