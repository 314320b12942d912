package wisp.statistics;

import java.util.function.DoubleUnaryOperator;
import java.util.function.IntToDoubleFunction;

/**
 * The average run length of a one-sided CUSUM that starts at 0, exactly: the chart begins anew at every return to 0, so
 *
 * <pre>ARL = E(observations until a return to 0 or an alarm) / P(alarm before a return)</pre>
 *
 * <p>(Page 1954 Biometrika 41:100.) Within such a cycle no floor acts, so after t observations the sum is a function of
 * their total alone; the Markov chain over those totals is followed until less than 1e-17 of the cycles are still under
 * way. Nothing is rounded to a grid, unlike in the chain of Brook &amp; Evans (1972) Biometrika 59:539, whose bias for
 * sums that do not lie on a grid is some 4 % at 500 states.
 */
final class RunLength {

    /** Sums this close to the limit are at it: steps such as 0.1 do not add up exactly. */
    static final double TIE = 1e-9;

    private static final double REMAINING = 1e-17;

    private static final int OBSERVATIONS_MAX = 5_000_000;

    /** A sum may climb by so many units before the alarm: more than any chart in use, and it fits in memory. */
    private static final double CLIMB_MAX = 100_000;

    /** Some tenths of a second. */
    private static final long MOVES_MAX = 100_000_000;

    private RunLength() {}

    /**
     * The average run length.
     *
     * @param what for the refusal
     * @param probability probability of an observation of y, for y from 0 to {@code largest}
     * @param exceeding probability that an observation is y or more, at y
     * @param largest the largest observation followed singly; larger ones count as alarms through {@code exceeding}
     * @param perUnit what one unit of the total adds to the sum
     * @param perObservation what each observation takes off the sum
     * @param limit an alarm is a sum at this or above
     */
    static double average(
            String what,
            IntToDoubleFunction probability,
            IntToDoubleFunction exceeding,
            int largest,
            double perUnit,
            double perObservation,
            double limit) {
        requireClimb(what, (limit + perObservation) / perUnit);
        double[] under = {1};
        int first = 0;
        long moves = 0;
        double observations = 0;
        double alarms = 0;
        double mass = 1;
        for (int t = 1; mass > REMAINING; t++) {
            if (t > OBSERVATIONS_MAX) {
                throw new CannotEstimate(what, "cycles are longer than " + OBSERVATIONS_MAX + " observations");
            }
            observations += mass;
            int low = (int) Math.floor(t * perObservation / perUnit) + 1;
            int high = lastBelow(limit, perUnit, t * perObservation);
            double[] next = new double[Math.max(0, high - low + 1)];
            mass = 0;
            moves += under.length * (1L + Math.min(largest, next.length));
            if (moves > MOVES_MAX) {
                throw new CannotEstimate(what, "its chain takes more than " + MOVES_MAX + " moves to follow");
            }
            for (int i = 0; i < under.length; i++) {
                int total = first + i;
                alarms += under[i] * exceeding.applyAsDouble(Math.max(0, high + 1 - total));
                for (int to = Math.max(low, total); to <= Math.min(high, total + largest); to++) {
                    double moved = under[i] * probability.applyAsDouble(to - total);
                    next[to - low] += moved;
                    mass += moved;
                }
            }
            under = next;
            first = low;
        }
        if (!(observations / alarms < Double.POSITIVE_INFINITY)) {
            throw new CannotEstimate(what, "an alarm is too unlikely to be counted");
        }
        return observations / alarms;
    }

    /** Refuses a chart of so fine a unit, or so far a limit, that its chain cannot be followed. */
    static void requireClimb(String what, double units) {
        if (!(units <= CLIMB_MAX)) {
            throw new CannotEstimate(what, "its limit is more than " + (int) CLIMB_MAX + " units away");
        }
    }

    /** The largest total whose sum is still below the limit. */
    private static int lastBelow(double limit, double perUnit, double taken) {
        int last = (int) Math.ceil((limit + taken) / perUnit) + 1;
        while (last * perUnit - taken >= limit - TIE) {
            last--;
        }
        return last;
    }

    /** The limit whose average run length is the wanted one, by halving; the length rises with the limit. */
    static double limitFor(String what, double wanted, DoubleUnaryOperator averageAtLimit) {
        if (!(wanted > 1 && Double.isFinite(wanted))) {
            throw new CannotEstimate(what, "the wanted average run length, " + wanted + ", is not above 1");
        }
        double high = 0.5;
        while (averageAtLimit.applyAsDouble(high) < wanted) {
            high *= 2;
        }
        double low = 0;
        while (high - low > Math.max(1e-9, 1e-12 * high)) {
            double middle = (low + high) / 2;
            if (averageAtLimit.applyAsDouble(middle) < wanted) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }
}
