package wisp.question.season;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.List;

/** Calendar weeks, from Monday to Sunday by the farm's dates. */
final class Weeks {
    private Weeks() {}

    static LocalDate monday(LocalDate day) {
        return day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
    }

    /** Every Monday from one to another, both among them. */
    static List<LocalDate> between(LocalDate first, LocalDate last) {
        return first.datesUntil(last.plusDays(1), java.time.Period.ofWeeks(1)).toList();
    }
}
