package wisp.indicator;

import java.util.Locale;
import wisp.statistics.Interval;

/** Says in a sentence what a comparison shows, never more than its interval and its p-value allow. */
final class ComparisonWords {
    private ComparisonWords() {}

    /**
     * The sentence.
     *
     * @param with what it is compared with
     * @param difference null where one of the two has no estimate
     * @param p p-value, adjusted by Holm where several comparisons are made at once; NaN where there is none
     */
    static String of(Measure measure, String with, Interval difference, double p, int comparisons) {
        if (difference == null) {
            return "It cannot be compared with " + with + ": one of the two has no estimate.";
        }
        String direction = difference.value() > 0 ? "higher" : "lower";
        boolean excludesZero = difference.low() > 0 || difference.high() < 0;
        boolean stands = p < 0.05 || (comparisons < 2 && Double.isNaN(p));
        String span = "(95 % interval " + span(measure, difference) + ")";
        if (difference.value() == 0) {
            return "The same as " + with + " " + span + ".";
        }
        String size = amount(measure, Math.abs(difference.value())) + " " + direction + " than " + with + " " + span;
        if (excludesZero && stands) {
            return size + ": more than chance.";
        }
        if (!excludesZero || Double.isNaN(p)) {
            return size + ": could be chance.";
        }
        String chance = String.format(Locale.ROOT, "p = %.2f", p);
        return size + ": could be chance, "
                + (comparisons < 2
                        ? "as an exact test gives " + chance + "."
                        : "once all " + comparisons + " comparisons are allowed for (" + chance + ").");
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
