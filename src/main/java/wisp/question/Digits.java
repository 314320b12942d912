package wisp.question;

import java.util.Locale;
import wisp.statistics.Interval;

/**
 * Numbers with as many digits as keep them on their side of the number that a claim hangs on: a ratio beside 1, a
 * difference beside 0, a p-value beside 0.05. Rounded further, "1.0 to 2.3" would contradict "more than chance".
 */
public final class Digits {
    private static final int MOST = 6;

    private Digits() {}

    /** A ratio with so many decimal places, and with more where it would otherwise read as 1 or as 0. */
    public static String ratio(double ratio, int places) {
        return Double.isInfinite(ratio)
                ? "∞"
                : number(ratio, Math.max(beside(ratio, 1, places), beside(ratio, 0, places)));
    }

    /** A ratio with its interval, such as {@code 1.6 (95 % interval 1.05 to 2.3)}. */
    public static String ratio(Interval ratio, int places) {
        return ratio(ratio.value(), places) + " " + span(ratio, places);
    }

    /** A ratio's interval in brackets, such as {@code (95 % interval 1.05 to 2.3)}. */
    static String span(Interval ratio, int places) {
        return "(95 % interval " + ratio(ratio.low(), places) + " to " + ratio(ratio.high(), places) + ")";
    }

    /** The size of a difference, without its sign, and with more places where it would otherwise read as 0. */
    public static String size(double difference, int places) {
        double size = Math.abs(difference);
        return number(size, beside(size, 0, places));
    }

    /** A p-value with three decimal places, and with more where it would otherwise read as 0.05. */
    public static String p(double p) {
        return p < 0.001 ? "below 0.001" : number(p, beside(p, 0.05, 3));
    }

    /** The fewest decimal places, so many at least, that tell a number from another; {@code places} for equal ones. */
    static int beside(double value, double other, int places) {
        for (int more = places; value != other && more <= MOST; more++) {
            if (!number(value, more).equals(number(other, more))) {
                return more;
            }
        }
        return value == other ? places : MOST;
    }

    private static String number(double value, int places) {
        return String.format(Locale.ROOT, "%." + places + "f", value);
    }
}
