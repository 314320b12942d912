package wisp.indicator;

import java.util.Locale;
import wisp.statistics.Interval;

/** Says in a sentence what a comparison shows, never more than its interval allows. */
final class ComparisonWords {
    private ComparisonWords() {}

    /**
     * The sentence.
     *
     * @param with what it is compared with
     * @param difference null where one of the two has no estimate
     * @param adjustedP Holm-adjusted p-value where several comparisons are made at once, else NaN
     */
    static String of(Measure measure, String with, Interval difference, double adjustedP, int comparisons) {
        if (difference == null) {
            return "It cannot be compared with " + with + ": one of the two has no estimate.";
        }
        String direction = difference.value() > 0 ? "higher" : "lower";
        boolean excludesZero = difference.low() > 0 || difference.high() < 0;
        boolean stands = comparisons < 2 || adjustedP < 0.05;
        String span = "(95 % interval " + span(measure, difference) + ")";
        if (difference.value() == 0) {
            return "The same as " + with + " " + span + ".";
        }
        String size = amount(measure, Math.abs(difference.value())) + " " + direction + " than " + with + " " + span;
        if (excludesZero && stands) {
            return size + ": more than chance.";
        }
        String several = excludesZero ? " once all " + comparisons + " comparisons are allowed for" : "";
        return size + ": could be chance" + several + ".";
    }

    private static String span(Measure measure, Interval difference) {
        return side(measure, difference.low()) + " to " + side(measure, difference.high());
    }

    private static String side(Measure measure, double value) {
        return amount(measure, Math.abs(value)) + (value < 0 ? " lower" : " higher");
    }

    private static String amount(Measure measure, double size) {
        return measure == Measure.RATE
                ? String.format(Locale.ROOT, "%.2f per 1000 calf-days", size)
                : String.format(Locale.ROOT, "%.1f percentage points", 100 * size);
    }
}
