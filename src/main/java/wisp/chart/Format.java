package wisp.chart;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** How the numbers of an axis are written. */
public enum Format {
    /** As they are: 0.5, 12. */
    NUMBER,
    /** Whole numbers only, such as calves: 0, 1, 2. */
    COUNT,
    /** A share written in per cent: 0.125 is 12.5%. */
    PERCENT,
    /** Days since 1 January 1970 written as a day: 3 Mar. */
    DATE;

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);

    /** The value in words, with no more decimals than the step between neighbours needs. */
    public String text(double value, double step) {
        return switch (this) {
            case NUMBER, COUNT -> decimal(value, step);
            case PERCENT -> decimal(value * 100, step * 100) + "%";
            case DATE -> DAY.format(LocalDate.ofEpochDay(Math.round(value)));
        };
    }

    private static String decimal(double value, double step) {
        int decimals = Math.max(0, (int) Math.ceil(-Math.log10(Math.abs(step)) - 1e-9));
        BigDecimal rounded = new BigDecimal(value).setScale(decimals, RoundingMode.HALF_EVEN);
        if (rounded.signum() == 0) {
            return "0";
        }
        return rounded.toPlainString().replace('-', '\u2212');
    }
}
