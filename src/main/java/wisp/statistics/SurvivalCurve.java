package wisp.statistics;

import java.util.Arrays;

/**
 * A Kaplan-Meier survival curve: a right-continuous step function of time with its counts and standard errors.
 *
 * @param times distinct exit times (events and censorings), ascending, in the unit given
 * @param atRisk lives at risk just before each time
 * @param events events at each time
 * @param censored lives censored at each time
 * @param survival S(t) from each time on
 * @param standardErrors Greenwood standard errors of S(t); 0 once S is 0, where R gives NaN
 * @param followUp the observed spans
 * @param scale the scale of the pointwise intervals
 * @param level their confidence level
 */
public record SurvivalCurve(
        double[] times,
        int[] atRisk,
        int[] events,
        int[] censored,
        double[] survival,
        double[] standardErrors,
        FollowUp followUp,
        CurveInterval scale,
        double level) {

    /**
     * S at {@code time} with its interval.
     *
     * <p>Where S is exactly 1 or 0 the interval is Wilson's score interval on the lives of known state: those with the
     * event by then and those still followed at {@code time}. With nobody censored this is the Wilson interval of the
     * plain proportion; with no event so far it rests on the number still at risk. After the last exit the curve is
     * held at its last value, and the method says so.
     *
     * @throws CannotEstimate when nobody was followed to {@code time} and no event came before
     */
    public Interval at(double time) {
        int i = StepFunction.lastAtOrBefore(times, time);
        double s = i < 0 ? 1 : survival[i];
        double se = i < 0 ? 0 : standardErrors[i];
        // with no event yet those of known state are those still followed, and no sum is needed
        int known = s == 1 ? followUp.atRiskAt(time) : s == 0 ? known(time, i) : 0;
        Interval there = scale.ofSurvival(s, se, known, level, "Kaplan-Meier");
        return s > 0 ? StepFunction.held(there, time, followUp) : there;
    }

    /** The lives at risk just before {@code time}: those whose follow-up reached it. */
    public int atRiskAt(double time) {
        return followUp.atRiskAt(time);
    }

    /**
     * The earliest time at which S has fallen to 1 - p or below, with the times at which the limits of the curve do
     * (Brookmeyer and Crowley 1982); an upper limit that is never reached is positive infinity.
     *
     * @throws CannotEstimate when the curve never falls that far
     */
    public Interval quantile(double p) {
        if (!(p > 0 && p < 1)) {
            throw new CannotEstimate("A quantile", "the share " + p + " is not between 0 and 1");
        }
        double value = firstBelow(survival, 1 - p);
        if (value == Double.POSITIVE_INFINITY) {
            throw new CannotEstimate("The " + p + " quantile", "the survival curve does not fall to " + (1 - p));
        }
        double[] low = new double[times.length];
        double[] high = new double[times.length];
        for (int i = 0; i < times.length; i++) {
            Interval there = at(times[i]);
            low[i] = there.low();
            high[i] = there.high();
        }
        return new Interval(value, firstBelow(low, 1 - p), firstBelow(high, 1 - p), level, "Brookmeyer-Crowley");
    }

    private double firstBelow(double[] curve, double share) {
        for (int i = 0; i < times.length; i++) {
            // a sum of rounding errors must not carry the median one step on
            if (curve[i] <= share + 1e-12 && survival[i] < 1) {
                return times[i];
            }
        }
        return Double.POSITIVE_INFINITY;
    }

    private int known(double time, int i) {
        int failed = i < 0 ? 0 : Arrays.stream(events, 0, i + 1).sum();
        int failedNow = i >= 0 && times[i] == time ? events[i] : 0;
        return failed + followUp.atRiskAt(time) - failedNow;
    }
}
