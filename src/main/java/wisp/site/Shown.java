package wisp.site;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import wisp.history.Life;
import wisp.indicator.Estimate;
import wisp.indicator.Measure;
import wisp.indicator.Target;
import wisp.statistics.Interval;

/** Numbers and times as people read them: no more digits than the data carry. */
final class Shown {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM yyyy", Locale.ENGLISH);
    private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("d MMM yyyy HH:mm", Locale.ENGLISH);

    private Shown() {}

    /** The estimate's value with its unit, or a dash. */
    static String value(Estimate estimate) {
        return estimate.interval() == null
                ? "–"
                : number(estimate, estimate.interval().value()) + unit(estimate);
    }

    /** Its 95 % interval, such as {@code 3.6 to 9.9}; empty where it has none. */
    static String interval(Estimate estimate) {
        return estimate.interval() == null ? "" : interval(estimate, estimate.interval());
    }

    private static String interval(Estimate estimate, Interval interval) {
        return number(estimate, interval.low()) + " to " + number(estimate, interval.high());
    }

    /** What stands in the denominator, such as {@code 232} or {@code 9,812 days}. */
    static String denominator(Estimate estimate) {
        String whole = count(Math.round(estimate.denominator()));
        return rate(estimate) ? whole + " days" : whole;
    }

    /** A whole number with its thousands apart. */
    static String count(long number) {
        return String.format(Locale.ENGLISH, "%,d", number);
    }

    /** The target, such as {@code below 5 %}; empty where there is none. */
    static String target(Estimate estimate) {
        Target target = estimate.indicator().target();
        return target == null ? "" : target(target, rate(estimate));
    }

    /** A target of a rate, or of a share. */
    static String target(Target target, boolean rate) {
        double value = rate ? target.value() : 100 * target.value();
        // 100 × 0.07 is 7.000000000000001
        String text = String.format(Locale.ROOT, "%.6f", value).replaceAll("\\.?0+$", "");
        return (target.below() ? "below " : "at least ") + text + (rate ? "" : " %");
    }

    /** A difference with its interval, in percentage points or per 1000 calf-days: {@code +1.2 (−2.8 to +5.3)}. */
    static String difference(Interval difference, boolean rate) {
        double scale = rate ? 1 : 100;
        int places = rate ? 2 : 1;
        return signed(scale * difference.value(), places) + " (" + signed(scale * difference.low(), places) + " to "
                + signed(scale * difference.high(), places) + ")";
    }

    private static String signed(double value, int places) {
        String size = decimals(Math.abs(value), places);
        boolean nought = size.matches("[0.]+");
        return nought ? size : (value < 0 ? "−" : "+") + size;
    }

    /** How the estimate stands to its target, in words; empty where there is none. */
    static String standing(Estimate estimate) {
        return standing(estimate, estimate.standing());
    }

    /** How it stands to a target of the farm's own, or any other. */
    static String standing(Estimate estimate, Target.Standing standing) {
        if (standing == null) {
            return "";
        }
        return switch (standing) {
            case MET -> "met";
            case MISSED -> "missed";
            case UNSURE -> estimate.few() ? "too few to say" : "interval spans the target";
        };
    }

    /** The unit behind a value. */
    static String unit(Estimate estimate) {
        return rate(estimate) ? "" : " %";
    }

    static boolean rate(Estimate estimate) {
        return estimate.indicator().measure() == Measure.RATE;
    }

    private static String number(Estimate estimate, double value) {
        if (rate(estimate)) {
            return decimals(value, value < 10 ? 2 : 1);
        }
        double n = estimate.denominator();
        return decimals(100 * value, n < 100 ? 0 : n < 10_000 ? 1 : 2);
    }

    static String decimals(double value, int places) {
        return Double.isInfinite(value) ? "∞" : String.format(Locale.ROOT, "%." + places + "f", value);
    }

    static String day(LocalDate date) {
        return DAY.format(date);
    }

    static String day(Instant time, ZoneId zone) {
        return DAY.format(time.atZone(zone));
    }

    static String date(LocalDate day) {
        return DAY.format(day);
    }

    /** Date and time of day, or the date alone where the hour is not known. */
    static String moment(Instant time, boolean timeKnown, ZoneId zone) {
        return (timeKnown ? MINUTE : DAY).format(time.atZone(zone));
    }

    /**
     * How old a calf was at a moment; where the hour of its birth is not known, an age in hours is what the day of
     * birth leaves open, in whole hours.
     */
    static String age(Life life, Instant at) {
        Duration age = life.ageAt(at);
        if (life.birthTimeKnown() || age.toHours() >= 48) {
            return age(age);
        }
        Duration least = Duration.between(life.endOfDay(0), at);
        long from = least.isNegative() ? 0 : hours(least);
        return "between " + from + " and " + hours(age) + " h (hour of birth not known)";
    }

    private static long hours(Duration age) {
        return Math.round(age.toMinutes() / 60.0);
    }

    /** An age in the unit that fits it, to the minute in the first two days: {@code 3 h 44 min}. */
    static String age(Duration age) {
        long minutes = age.toMinutes();
        if (minutes < 120) {
            return minutes + " min";
        }
        if (age.toHours() >= 48) {
            return age.toDays() + " d";
        }
        return age.toHours() + " h" + (minutes % 60 == 0 ? "" : " " + minutes % 60 + " min");
    }
}
