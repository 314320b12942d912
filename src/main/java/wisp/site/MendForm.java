package wisp.site;

import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/**
 * What stands in the form that mends an event: at first the event itself, afterwards what somebody typed.
 *
 * @param correction the id of the correction to be recorded; the same form sent twice is one correction
 * @param opened when the form was opened, RFC 3339
 * @param seen when the form of the event that is shown was recorded, to notice another's correction in between
 * @param action {@code withdraw} or {@code correct}
 * @param reason why
 * @param name who corrects
 * @param time local time of the event, as a datetime-local field has it
 * @param later true for the second of two equal hours, when clocks are put back
 * @param dayOnly true where only the day is known
 * @param fields the event's data
 */
public record MendForm(
        String correction,
        String opened,
        String seen,
        String action,
        String reason,
        String name,
        String time,
        boolean later,
        boolean dayOnly,
        List<MendField> fields) {
    static final String WITHDRAW = "withdraw";
    static final String CORRECT = "correct";
    /** What stands before a data field's name in the form. */
    static final String PREFIX = "data.";

    private static final DateTimeFormatter LOCAL = DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss");

    /** A form that holds the event as it is. */
    static MendForm fresh(MendTarget target, Instant now) {
        return new MendForm(
                UUID.randomUUID().toString(),
                now.truncatedTo(ChronoUnit.SECONDS).toString(),
                target.event().recorded().toString(),
                "",
                "",
                "",
                local(target.event().time(), target.zone()),
                second(target.event().time(), target.zone()),
                !target.event().timeKnown(),
                target.correction() ? List.of() : MendField.of(target.event().data()));
    }

    /**
     * A form as it was sent.
     *
     * @param sent its fields by name
     */
    static MendForm sent(Map<String, String> sent, MendTarget target) {
        Map<String, String> data = new LinkedHashMap<>();
        sent.forEach((name, value) -> {
            if (name.startsWith(PREFIX)) {
                data.put(name.substring(PREFIX.length()), value);
            }
        });
        return new MendForm(
                sent.getOrDefault("correction", "").strip(),
                sent.getOrDefault("opened", "").strip(),
                sent.getOrDefault("seen", "").strip(),
                sent.getOrDefault("action", "").strip(),
                sent.getOrDefault("reason", "").strip(),
                sent.getOrDefault("name", "").strip(),
                sent.getOrDefault("time", "").strip(),
                sent.containsKey("later"),
                sent.containsKey("day_only"),
                target.correction()
                        ? List.of()
                        : MendField.typed(MendField.of(target.event().data()), data));
    }

    /** The same words under a new name, to be sent as another correction. */
    MendForm again(MendTarget target, Instant now) {
        MendForm fresh = fresh(target, now);
        return new MendForm(
                fresh.correction, fresh.opened, fresh.seen, action, reason, name, time, later, dayOnly, fields);
    }

    /** Whether another form says the same of the event. */
    boolean says(MendForm other) {
        boolean sameTime = (time + ":00").equals(other.time) || time.equals(other.time);
        return sameTime && later == other.later && dayOnly == other.dayOnly && fields.equals(other.fields);
    }

    static String local(Instant time, ZoneId zone) {
        return LOCAL.format(time.atZone(zone));
    }

    /** Whether a moment lies in the second of two equal hours. */
    static boolean second(Instant time, ZoneId zone) {
        List<ZoneOffset> offsets =
                zone.getRules().getValidOffsets(time.atZone(zone).toLocalDateTime());
        return offsets.size() == 2 && zone.getRules().getOffset(time).equals(offsets.get(1));
    }
}
