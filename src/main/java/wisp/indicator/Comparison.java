package wisp.indicator;

import wisp.statistics.Interval;

/**
 * A figure beside another of the same definition.
 *
 * @param with what it is compared with, such as a season's name or {@code all others}
 * @param other the other figure
 * @param difference this minus the other, with its interval; null where one of them has none
 * @param ratio this over the other, with its interval; null where it cannot be estimated
 * @param p two-sided p-value of no difference; NaN where it cannot be computed
 * @param adjustedP the same after Holm's adjustment for the comparisons made at once; NaN without
 * @param comparisons how many were made at once
 * @param words what it says, a whole sentence
 */
public record Comparison(
        String with,
        Estimate other,
        Interval difference,
        Interval ratio,
        double p,
        double adjustedP,
        int comparisons,
        String words) {}
