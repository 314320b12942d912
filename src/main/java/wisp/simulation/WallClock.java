package wisp.simulation;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.time.zone.ZoneRules;

/** The clock on the farm's wall, over minutes since 1970 in UTC. */
final class WallClock {
    private final ZoneId zone;
    private final ZoneRules rules;

    WallClock(ZoneId zone) {
        this.zone = zone;
        this.rules = zone.getRules();
    }

    OffsetDateTime at(long minute) {
        ZoneOffset offset = offset(minute);
        return OffsetDateTime.of(LocalDateTime.ofEpochSecond(minute * 60, 0, offset), offset);
    }

    int hour(long minute) {
        return (int) (Math.floorMod(local(minute), 1440L) / 60);
    }

    LocalDate date(long minute) {
        return LocalDate.ofEpochDay(Math.floorDiv(local(minute), 1440L));
    }

    /** True at 22–06 h. */
    boolean night(long minute) {
        int hour = hour(minute);
        return hour >= 22 || hour < 6;
    }

    /** The minute of this time on the day, the clocks' change minded. */
    long minute(LocalDate day, int minuteOfDay) {
        LocalDateTime local = day.atTime(minuteOfDay / 60, minuteOfDay % 60);
        return ZonedDateTime.of(local, zone).toEpochSecond() / 60;
    }

    /** The first minute of the day in which this minute lies. */
    OffsetDateTime startOfDay(long minute) {
        return date(minute).atStartOfDay(zone).toOffsetDateTime();
    }

    /** The same minute, or one between 06 and 07 h of that morning where it lies at night: nobody looks before. */
    long whenSeen(long minute, Chance chance) {
        if (!night(minute)) {
            return minute;
        }
        LocalDate morning = hour(minute) >= 22 ? date(minute).plusDays(1) : date(minute);
        return Math.max(minute, minute(morning, 360 + chance.whole(0, 59)));
    }

    private long local(long minute) {
        return minute + offset(minute).getTotalSeconds() / 60;
    }

    private ZoneOffset offset(long minute) {
        return rules.getOffset(Instant.ofEpochSecond(minute * 60));
    }
}
