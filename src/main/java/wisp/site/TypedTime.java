package wisp.site;

import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.zone.ZoneOffsetTransition;
import java.util.List;
import wisp.event.Fault;

/** A moment that somebody typed by the farm's clocks. */
final class TypedTime {
    private static final Duration LATELY = Duration.ofDays(14);

    private TypedTime() {}

    /**
     * Reads it.
     *
     * @param typed as a datetime-local field has it
     * @param later the second of two equal hours is meant, where clocks were put back
     * @param dayOnly only the day counts
     * @param faults takes what is wrong, under {@code time}
     * @return null where something is wrong
     */
    static OffsetDateTime read(String typed, boolean later, boolean dayOnly, ZoneId zone, List<Fault> faults) {
        LocalDateTime local;
        try {
            local = LocalDateTime.parse(typed);
        } catch (DateTimeException wrong) {
            String problem = "\"" + typed + "\" is not a day and an hour.";
            faults.add(new Fault("time", problem, "Write it as 2026-03-01T07:30."));
            return null;
        }
        if (dayOnly) {
            return local.toLocalDate().atStartOfDay(zone).toOffsetDateTime();
        }
        List<ZoneOffset> offsets = zone.getRules().getValidOffsets(local);
        if (offsets.isEmpty()) {
            String problem = "The clocks were put forward that night: there was no such time.";
            faults.add(new Fault("time", problem, "Write an hour that the clock showed."));
            return null;
        }
        boolean second = offsets.size() == 2 && later;
        return local.atOffset(offsets.get(second ? 1 : 0));
    }

    /** Whether the clocks were put back in the last days, so that an hour of them came twice. */
    static boolean twiceLately(Instant now, ZoneId zone) {
        ZoneOffsetTransition last = zone.getRules().previousTransition(now);
        return last != null && last.isOverlap() && last.getInstant().isAfter(now.minus(LATELY));
    }

    /** Whether the clocks showed a typed time twice. */
    static boolean twice(String typed, ZoneId zone) {
        try {
            return zone.getRules().getValidOffsets(LocalDateTime.parse(typed)).size() > 1;
        } catch (DateTimeException noSuchDay) {
            return false;
        }
    }
}
