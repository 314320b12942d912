package wisp.question;

import java.util.Locale;

/** Shares as people read them: whole percents, and a decimal only where rounding would say none or all. */
public final class Percent {
    private Percent() {}

    /** A share with its unit. */
    public static String of(double share) {
        return number(share) + " %";
    }

    /** The fewest decimal places with which two shares that differ read as different; 0 for equal ones. */
    static int apart(double one, double other) {
        return number(one).equals(number(other)) ? Digits.beside(100 * one, 100 * other, 0) : 0;
    }

    /** A share with its unit, with so many decimal places at least. */
    static String of(double share, int places) {
        return places == 0 ? of(share) : String.format(Locale.ROOT, "%." + places + "f %%", 100 * share);
    }

    /** An interval of shares, such as {@code 11 to 47 %}. */
    public static String span(double low, double high) {
        return number(low) + " to " + number(high) + " %";
    }

    private static String number(double share) {
        double percent = 100 * share;
        long whole = Math.round(percent);
        if (whole == 0 && share > 0 || whole == 100 && share < 1) {
            String decimal = String.format(Locale.ROOT, "%.1f", percent);
            return switch (decimal) {
                case "0.0" -> "less than 0.1";
                case "100.0" -> "more than 99.9";
                default -> decimal;
            };
        }
        return Long.toString(whole);
    }
}
