package wisp.question.season;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Map;
import java.util.TreeMap;

/** Where calendar weeks begin in one zone, worked out once a week: many calves share few weeks. */
final class WeekStarts {
    private final ZoneId zone;
    private final TreeMap<Instant, Week> byStart = new TreeMap<>();

    WeekStarts(ZoneId zone) {
        this.zone = zone;
    }

    /**
     * One week.
     *
     * @param monday its first day
     * @param next the moment at which the week after it begins
     */
    record Week(LocalDate monday, Instant next) {}

    /** The week that a moment lies in. */
    Week holding(Instant time) {
        Map.Entry<Instant, Week> known = byStart.floorEntry(time);
        if (known != null && time.isBefore(known.getValue().next())) {
            return known.getValue();
        }
        LocalDate monday = Weeks.monday(time.atZone(zone).toLocalDate());
        Week week = new Week(monday, monday.plusWeeks(1).atStartOfDay(zone).toInstant());
        byStart.put(monday.atStartOfDay(zone).toInstant(), week);
        return week;
    }
}
