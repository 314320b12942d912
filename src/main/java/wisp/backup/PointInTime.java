package wisp.backup;

import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeParseException;
import wisp.event.Rfc3339;
import wisp.log.StoredEvent;

/**
 * Up to where a log is restored: always a beginning of the chain, so that hashes stay as they are.
 *
 * @param sequence the last event to keep, or {@link Long#MAX_VALUE}
 * @param time kept are events before the first that was recorded later than this; {@link Instant#MAX} for all
 */
record PointInTime(long sequence, Instant time) {
    /** All of it. */
    static final PointInTime NOW = new PointInTime(Long.MAX_VALUE, Instant.MAX);

    /**
     * Reads a sequence, a date (its end by the farm's clocks) or a time with an offset.
     *
     * @throws BackupFailure where it is none of them
     */
    static PointInTime read(String text, ZoneId zone) {
        if (text.matches("\\d{1,18}")) {
            return new PointInTime(Long.parseLong(text), Instant.MAX);
        }
        if (text.matches("\\d{4}-\\d\\d-\\d\\d")) {
            try {
                LocalDate day = LocalDate.parse(text);
                return new PointInTime(
                        Long.MAX_VALUE,
                        day.plusDays(1).atStartOfDay(zone).toInstant().minusNanos(1));
            } catch (DateTimeParseException noSuchDay) {
                throw new BackupFailure("\"" + text + "\" is no day of the calendar. Check day and month.", noSuchDay);
            }
        }
        OffsetDateTime time = Rfc3339.read(text, (problem, mend) -> {
            throw new BackupFailure(problem + " " + mend + " A date or an event's sequence will do as well.", null);
        });
        return new PointInTime(Long.MAX_VALUE, time.toInstant());
    }

    /** Whether this event is the first that is not kept any more, or one after it. */
    boolean endsBefore(StoredEvent stored) {
        return stored.sequence() > sequence
                || stored.event().recordedTime().toInstant().isAfter(time);
    }
}
