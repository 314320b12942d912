package wisp.indicator;

import java.time.LocalDate;

/**
 * The age from which something is asked, in days of life or in calendar months.
 *
 * @param day the first day of life, null where counted in months
 * @param months the age in calendar months, null where counted in days; both null where it is never asked
 */
public record AgeFrom(Integer day, Integer months) {
    /** Never asked. */
    public static final AgeFrom NEVER = new AgeFrom(null, null);

    /** The first local date on which it is asked, null where never. */
    public LocalDate first(LocalDate born) {
        LocalDate byDay = day == null ? null : born.plusDays(day);
        LocalDate byMonths = months == null ? null : born.plusMonths(months);
        if (byDay == null || byMonths == null) {
            return byDay == null ? byMonths : byDay;
        }
        return byDay.isBefore(byMonths) ? byDay : byMonths;
    }

    /** Whether it is asked on a local date. */
    public boolean reached(LocalDate born, LocalDate date) {
        LocalDate first = first(born);
        return first != null && !date.isBefore(first);
    }

    /** True where it is never asked. */
    public boolean never() {
        return day == null && months == null;
    }

    /** In words, such as {@code day 28} or {@code 2 months of age}. */
    public String words() {
        return day != null ? (day == 0 ? "birth on" : "day " + day) : months + " months of age";
    }
}
