package wisp.statistics;

import java.util.Arrays;

/**
 * The spans over which lives were observed: each from its entry (not included) to its exit (included).
 *
 * @param entries entry times, ascending; empty when every life was observed from the origin, time 0 included
 * @param exits exit times (event or censoring), ascending
 */
public record FollowUp(double[] entries, double[] exits) {

    /** The lives at risk just before {@code time}: entered before it, and event or censoring not before it. */
    public int atRiskAt(double time) {
        int entered = entries.length == 0 ? exits.length : below(entries, time);
        return entered - below(exits, time);
    }

    /** The last exit. */
    public double last() {
        return exits[exits.length - 1];
    }

    private static int below(double[] ascending, double time) {
        int low = 0;
        int high = ascending.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (ascending[middle] < time) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    static FollowUp of(double[] entries, double[] exits) {
        return new FollowUp(sorted(entries), sorted(exits));
    }

    private static double[] sorted(double[] values) {
        double[] ascending = values.clone();
        Arrays.sort(ascending);
        return ascending;
    }
}
