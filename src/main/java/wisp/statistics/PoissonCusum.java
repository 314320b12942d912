package wisp.statistics;

import org.apache.commons.statistics.distribution.PoissonDistribution;

/**
 * The cumulative sum chart of counts, which signals a rise of their mean: Lucas (1985) Technometrics 27:129. From S =
 * 0, each count gives S = max(0, S + count - reference); an alarm is S at the limit or above.
 *
 * @param reference k, taken off each count, above 0
 * @param limit h, where the alarm is, above 0
 */
public record PoissonCusum(double reference, double limit) {

    private static final String WHAT = "The Poisson CUSUM";

    /**
     * Checks the numbers.
     *
     * @throws CannotEstimate if one is not above 0
     */
    public PoissonCusum {
        Require.positive(WHAT, "its reference value", reference);
        Require.positive(WHAT, "its limit", limit);
    }

    /**
     * Lucas' reference value between two means, (m1 - m0) / (log m1 - log m0), which makes the chart a likelihood
     * ratio.
     *
     * @param acceptable m0, above 0
     * @param raised m1, above m0
     * @throws CannotEstimate if not 0 &lt; m0 &lt; m1
     */
    public static double referenceValue(double acceptable, double raised) {
        Require.positive(WHAT, "the acceptable mean", acceptable);
        Require.positive(WHAT, "the raised mean", raised);
        if (raised <= acceptable) {
            throw new CannotEstimate(
                    WHAT, "the raised mean, " + raised + ", is not above the acceptable one, " + acceptable);
        }
        return (raised - acceptable) / (Math.log(raised) - Math.log(acceptable));
    }

    /**
     * The chart of Lucas' reference value with the smallest limit whose average run length in control is at least the
     * wanted one.
     *
     * @param averageRunLength counts between false alarms, above 1
     * @throws CannotEstimate if the means or the length are out of range
     */
    public static PoissonCusum withRunLength(double acceptable, double raised, double averageRunLength) {
        double k = referenceValue(acceptable, raised);
        double limit =
                RunLength.limitFor(WHAT, averageRunLength, at -> new PoissonCusum(k, at).averageRunLength(acceptable));
        return new PoissonCusum(k, limit);
    }

    /**
     * The sum after each count.
     *
     * @throws CannotEstimate if a count is negative
     */
    public double[] path(int[] counts) {
        double[] path = new double[counts.length];
        double sum = 0;
        for (int t = 0; t < path.length; t++) {
            Require.count(WHAT, counts[t]);
            sum = Math.max(0, sum + counts[t] - reference);
            path[t] = sum;
        }
        return path;
    }

    /** The index of the first count with an alarm, counted from 0, or -1. */
    public int firstAlarm(int[] counts) {
        double[] path = path(counts);
        for (int t = 0; t < path.length; t++) {
            if (path[t] >= limit - RunLength.TIE) {
                return t;
            }
        }
        return -1;
    }

    /**
     * The average number of counts until an alarm at a constant mean, from S = 0; exact.
     *
     * @throws CannotEstimate if the mean is not above 0, or an alarm is too unlikely to be counted
     */
    public double averageRunLength(double mean) {
        Require.positive(WHAT, "the mean", mean);
        RunLength.requireClimb(WHAT, reference + limit);
        PoissonDistribution counts = PoissonDistribution.of(mean);
        int largest = (int) Math.ceil(reference + limit) + 1;
        double[] probability = new double[largest + 2];
        double[] exceeding = new double[largest + 2];
        for (int y = 0; y < probability.length; y++) {
            probability[y] = counts.probability(y);
            exceeding[y] = y == 0 ? 1 : counts.survivalProbability(y - 1);
        }
        return RunLength.average(WHAT, y -> probability[y], y -> exceeding[y], largest, 1, reference, limit);
    }
}
