package wisp.statistics;

import java.util.Arrays;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The Kaplan-Meier (product-limit) estimator of survival with Greenwood's variance.
 *
 * <p>S(t) = prod over event times ti &lt;= t of (1 - di / ni) (Kaplan and Meier 1958, J Am Stat Assoc 53:457), var S(t)
 * = S(t)^2 sum di / (ni (ni - di)) (Greenwood 1926). Times need not be sorted; an event at t precedes a censoring at t,
 * and both are at risk at t. Agrees with R's {@code survival::survfit}, save that the standard error is 0 and not NaN
 * once S is 0. With late entry the risk set may run empty early; S is 0 from there on, as the estimator has it.
 */
public final class KaplanMeier {
    private KaplanMeier() {}

    /** The curve with 95 % log(-log) intervals; {@code events[i]} tells an event from a censoring at times[i]. */
    public static SurvivalCurve of(double[] times, boolean[] events) {
        return of(times, events, CurveInterval.LOG_LOG, 0.95);
    }

    /**
     * The curve of lives observed from the origin.
     *
     * @throws CannotEstimate when there are no observations or a time is negative or not a number
     */
    public static SurvivalCurve of(double[] times, boolean[] events, CurveInterval scale, double level) {
        return leftTruncated(new double[0], times, events, scale, level);
    }

    /** One curve a stratum, in ascending order of the labels in {@code strata}, with 95 % log(-log) intervals. */
    public static SortedMap<Integer, SurvivalCurve> byStratum(double[] times, boolean[] events, int[] strata) {
        if (strata.length != times.length || events.length != times.length) {
            throw new CannotEstimate("The survival curve", "the times, events and strata given are not equally many");
        }
        int[] labels = GroupedRiskTable.labels(strata);
        int[] sizes = new int[labels.length];
        int[] which = new int[strata.length];
        for (int i = 0; i < strata.length; i++) {
            which[i] = Arrays.binarySearch(labels, strata[i]);
            sizes[which[i]]++;
        }
        double[][] ownTimes = new double[labels.length][];
        boolean[][] ownEvents = new boolean[labels.length][];
        for (int s = 0; s < labels.length; s++) {
            ownTimes[s] = new double[sizes[s]];
            ownEvents[s] = new boolean[sizes[s]];
        }
        for (int i = 0; i < strata.length; i++) {
            int s = which[i];
            int at = --sizes[s];
            ownTimes[s][at] = times[i];
            ownEvents[s][at] = events[i];
        }
        SortedMap<Integer, SurvivalCurve> curves = new TreeMap<>();
        for (int s = 0; s < labels.length; s++) {
            curves.put(labels[s], of(ownTimes[s], ownEvents[s]));
        }
        return curves;
    }

    /** The curve of lives under observation only after their entry, with 95 % log(-log) intervals. */
    public static SurvivalCurve leftTruncated(double[] entries, double[] times, boolean[] events) {
        return leftTruncated(entries, times, events, CurveInterval.LOG_LOG, 0.95);
    }

    /**
     * The curve of lives under observation only after their entry: at risk over (entry, time]; entry 0 is the origin.
     *
     * @throws CannotEstimate when there are no observations, a time is negative or not a number, or an entry later than
     *     0 is not before its time
     */
    public static SurvivalCurve leftTruncated(
            double[] entries, double[] times, boolean[] events, CurveInterval scale, double level) {
        TwoSided.quantile(level);
        RiskTable table = RiskTable.of("The survival curve", entries, times, RiskTable.causes(events), 1);
        int[] deaths = table.events()[0];
        int steps = table.times().length;
        double[] survival = new double[steps];
        double[] errors = new double[steps];
        double s = 1;
        double greenwood = 0;
        for (int i = 0; i < steps; i++) {
            double n = table.atRisk()[i];
            double d = deaths[i];
            if (d > 0) {
                s *= (n - d) / n;
                greenwood += d / (n * (n - d));
            }
            survival[i] = s;
            errors[i] = s == 0 ? 0 : s * Math.sqrt(greenwood);
        }
        return new SurvivalCurve(
                table.times(),
                table.atRisk(),
                deaths,
                table.censored(),
                survival,
                errors,
                table.followUp(),
                scale,
                level);
    }
}
