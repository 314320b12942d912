package wisp.question.season;

import java.util.Locale;
import wisp.indicator.Estimate;
import wisp.indicator.Measure;
import wisp.indicator.Target;
import wisp.statistics.Interval;

/** Figures in the words of a sentence, with no more digits than their calves carry. */
final class Said {
    /** Below this many calves the counts are said and not a percentage. */
    static final int FEW = 20;

    private Said() {}

    static String value(Estimate estimate) {
        return number(estimate, estimate.interval().value()) + unit(estimate);
    }

    /** Both limits, such as {@code 3.6 to 9.9 %}. */
    static String span(Estimate estimate) {
        return number(estimate, estimate.interval().low()) + " to "
                + number(estimate, estimate.interval().high()) + unit(estimate);
    }

    static String count(long number) {
        return String.format(Locale.ENGLISH, "%,d", number);
    }

    static String target(Target target, Measure measure) {
        double value = measure == Measure.RATE ? target.value() : 100 * target.value();
        // 100 × 0.07 is 7.000000000000001
        String text = String.format(Locale.ROOT, "%.6f", value).replaceAll("\\.?0+$", "");
        return (target.below() ? "below " : "at least ") + text + (measure == Measure.RATE ? " per 1000" : " %");
    }

    /** How much higher or lower, such as {@code 2.1 percentage points higher}. */
    static String side(Measure measure, double difference) {
        String size = (rounded(measure, difference) ? "less than " : "") + amount(measure, Math.abs(difference));
        return size + (difference < 0 ? " lower" : " higher");
    }

    /** From where to where a difference may lie. */
    static String sides(Measure measure, Interval difference) {
        if (difference.low() >= 0 || difference.high() <= 0) {
            double near = Math.min(Math.abs(difference.low()), Math.abs(difference.high()));
            double far = Math.max(Math.abs(difference.low()), Math.abs(difference.high()));
            String least = rounded(measure, near) ? "less than " : "";
            return least + bare(measure, near) + " to " + amount(measure, far);
        }
        return side(measure, difference.low()) + " to " + side(measure, difference.high());
    }

    private static String amount(Measure measure, double size) {
        String unit = measure == Measure.RATE ? " per 1000 calf-days" : " percentage points";
        return bare(measure, size) + unit;
    }

    private static String bare(Measure measure, double size) {
        double scaled = measure == Measure.RATE ? size : 100 * size;
        int places = measure == Measure.RATE ? 2 : 1;
        return decimals(rounded(measure, size) ? Math.pow(10, -places) : scaled, places);
    }

    /** Whether a size that is more than 0 would read as 0. */
    private static boolean rounded(Measure measure, double size) {
        double half = measure == Measure.RATE ? 0.005 : 0.0005;
        return size != 0 && Math.abs(size) < half;
    }

    /** Whether two figures are the same in as many digits as both carry. */
    static boolean alike(Estimate one, Estimate other, double difference) {
        Estimate fewer = one.denominator() < other.denominator() ? one : other;
        double half = rate(one) ? 0.005 : fewer.denominator() < 100 ? 0.005 : 0.0005;
        return Math.abs(difference) < half;
    }

    private static String unit(Estimate estimate) {
        return rate(estimate) ? " per 1000 calf-days" : " %";
    }

    private static String number(Estimate estimate, double value) {
        if (rate(estimate)) {
            return decimals(value, value < 10 ? 2 : 1);
        }
        double n = estimate.denominator();
        return decimals(100 * value, n < 100 ? 0 : n < 10_000 ? 1 : 2);
    }

    private static boolean rate(Estimate estimate) {
        return estimate.indicator().measure() == Measure.RATE;
    }

    private static String decimals(double value, int places) {
        return Double.isInfinite(value) ? "any number" : String.format(Locale.ROOT, "%." + places + "f", value);
    }
}
