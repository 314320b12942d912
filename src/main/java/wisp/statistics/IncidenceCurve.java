package wisp.statistics;

import java.util.Arrays;

/**
 * The cumulative incidence of one cause among competing ones: a right-continuous step function of time.
 *
 * @param cause the cause, counted from 1
 * @param times distinct exit times (events of any cause and censorings), ascending, in the unit given
 * @param atRisk lives at risk just before each time
 * @param events events of this cause at each time
 * @param competing events of the other causes at each time
 * @param censored lives censored at each time
 * @param incidence F(t) from each time on
 * @param standardErrors delta-method standard errors of F(t)
 * @param followUp the observed spans
 * @param scale the scale, applied to 1 - F, of the pointwise intervals
 * @param level their confidence level
 */
public record IncidenceCurve(
        int cause,
        double[] times,
        int[] atRisk,
        int[] events,
        int[] competing,
        int[] censored,
        double[] incidence,
        double[] standardErrors,
        FollowUp followUp,
        CurveInterval scale,
        double level) {

    /**
     * F at {@code time} with its interval.
     *
     * <p>Where F is exactly 0 or 1 the interval is Wilson's score interval on the lives of known state: those with an
     * event of any cause by then and those still followed at {@code time}. With nobody censored this is the Wilson
     * interval of the plain proportion. After the last exit the curve is held at its last value, and the method says
     * so.
     *
     * @throws CannotEstimate when nobody was followed to {@code time} and no event of any cause came before
     */
    public Interval at(double time) {
        int i = StepFunction.lastAtOrBefore(times, time);
        double f = i < 0 ? 0 : incidence[i];
        double se = i < 0 ? 0 : standardErrors[i];
        int known = f > 0 && f < 1 ? 0 : known(time, i);
        Interval there = scale.ofIncidence(f, se, known, level, "Aalen-Johansen");
        return f < 1 ? StepFunction.held(there, time, followUp) : there;
    }

    /** The lives at risk just before {@code time}: those whose follow-up reached it. */
    public int atRiskAt(double time) {
        return followUp.atRiskAt(time);
    }

    private int known(double time, int i) {
        int failed = i < 0
                ? 0
                : Arrays.stream(events, 0, i + 1).sum()
                        + Arrays.stream(competing, 0, i + 1).sum();
        int failedNow = i >= 0 && times[i] == time ? events[i] + competing[i] : 0;
        return failed + followUp.atRiskAt(time) - failedNow;
    }
}
