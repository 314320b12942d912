package wisp.question.navels;

import java.util.Locale;
import wisp.statistics.Interval;

/** Numbers as sentences have them: no more digits than the calves behind them carry. */
public final class Plain {
    private Plain() {}

    /** A share in per cent, whole below a hundred calves. */
    public static String percent(double share, int calves) {
        return number(100 * share, calves < 100 ? 0 : 1) + " %";
    }

    /** A share's interval, such as {@code 5.6 to 16.1 %}. */
    public static String span(Interval share, int calves) {
        int places = calves < 100 ? 0 : 1;
        return number(100 * share.low(), places) + " to " + number(100 * share.high(), places) + " %";
    }

    /** A ratio with two significant figures, and with a third where it would otherwise read as 1; never more. */
    public static String ratio(double ratio) {
        if (ratio == 0) {
            return "0";
        }
        if (ratio != 1 && Math.abs(ratio - 1) < 0.05) {
            return number(ratio, 2);
        }
        return number(ratio, ratio >= 10 ? 0 : ratio < 0.1 ? 2 : 1);
    }

    /** A ratio's interval, such as {@code 1.1 to 4.2}. */
    public static String span(Interval ratio) {
        return Double.isInfinite(ratio.high())
                ? ratio(ratio.low()) + " to any number"
                : ratio(ratio.low()) + " to " + ratio(ratio.high());
    }

    /**
     * A difference of risks in percentage points, its direction in a word.
     *
     * @param calves in the smaller of the two groups
     */
    public static String points(double difference, String more, String less, int calves) {
        return points(difference, calves) + " " + (difference < 0 ? less : more);
    }

    /** The size of a difference of risks in percentage points: whole below a hundred calves, unless that hides it. */
    public static String points(double difference, int calves) {
        double size = 100 * Math.abs(difference);
        return number(size, calves < 100 && (size >= 0.5 || size < 0.05) ? 0 : 1);
    }

    /** A count with its noun, such as {@code one calf} or {@code 1,204 calves}. */
    public static String count(int n, String one, String many) {
        return n == 1 ? "one " + one : whole(n) + " " + many;
    }

    /** A whole number, thousands apart. */
    public static String whole(long n) {
        return String.format(Locale.ENGLISH, "%,d", n);
    }

    /** A number of calves that is only an order of size, to two significant figures, never rounded down. */
    public static String about(long n) {
        long step = 1;
        while (n / step >= 100) {
            step *= 10;
        }
        return whole((n + step - 1) / step * step);
    }

    /** A p-value. */
    public static String p(double p) {
        return p < 0.001 ? "below 0.001" : number(p, p < 0.1 ? 3 : 2);
    }

    /** A number with so many decimal places and a true minus sign. */
    public static String number(double value, int places) {
        return String.format(Locale.ROOT, "%." + places + "f", value).replace('-', '−');
    }
}
