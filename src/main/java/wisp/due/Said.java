package wisp.due;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Days and moments in words. */
final class Said {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEEE d MMMM yyyy", Locale.UK);
    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("d MMMM yyyy HH:mm", Locale.UK);

    private Said() {}

    static String day(LocalDate day) {
        return DAY.format(day);
    }

    static String moment(Instant moment, ZoneId zone) {
        return MOMENT.format(moment.atZone(zone));
    }

    /** What a limit that ends on a weekend means for papers, empty where it ends on a working day. */
    static String weekend(DueSpan span, ZoneId zone) {
        if (span.closes() == null) {
            return "";
        }
        LocalDate last = span.closes().minusNanos(1).atZone(zone).toLocalDate();
        int back = last.getDayOfWeek() == DayOfWeek.SATURDAY ? 1 : last.getDayOfWeek() == DayOfWeek.SUNDAY ? 2 : 0;
        return back == 0
                ? ""
                : "The limit ends on " + day(last)
                        + " and is not moved to a working day: have papers and post ready by "
                        + day(last.minusDays(back)) + ". Public holidays are not known here.";
    }
}
