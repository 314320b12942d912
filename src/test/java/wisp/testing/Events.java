package wisp.testing;

import com.fasterxml.jackson.databind.json.JsonMapper;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import wisp.event.EventReader;
import wisp.log.StoredEvent;

/**
 * A short log for tests, written as short text. Times are local to the log's zone: {@code 2026-03-01 07:30} (seconds
 * and fractions may follow), {@code 2026-03-01} for an event of which only the date is known, or a whole RFC 3339 time.
 * Fields are written as a YAML flow without its braces: {@code alive: true, sex: female}. Every event passes the same
 * reader as real ones, so that no test stands on an event that could not be recorded.
 */
public final class Events {
    /** The source of every event here; the id is {@code e} and the sequence. */
    public static final String SOURCE = "test";

    private static final JsonMapper JSON = new JsonMapper();

    private final List<StoredEvent> all = new ArrayList<>();
    private ZoneId zone;
    private OffsetDateTime recorded;

    /** A log whose times are local to a zone. */
    public Events(String zone) {
        this.zone = ZoneId.of(zone);
    }

    /** A log of a farm by London time. */
    public static Events london() {
        return new Events("Europe/London");
    }

    /** From here on, times are local to another zone. */
    public Events in(String otherZone) {
        zone = ZoneId.of(otherZone);
        return this;
    }

    /** From here on, events are recorded at this time; null: when they happened. */
    public Events recordedAt(String when) {
        recorded = when == null ? null : time(when);
        return this;
    }

    /** Adds an event. */
    public StoredEvent add(String type, String subject, String when, String fields) {
        return add(type, subject, when, fields(when, fields));
    }

    /** Withdraws an event. */
    public StoredEvent retract(StoredEvent target, String when) {
        return add("retracted", target.event().subject(), when, target(target));
    }

    /** Puts an event's whole data and time anew; {@code newTime} may be only a date. */
    public StoredEvent amend(StoredEvent target, String when, String newTime, String newFields) {
        Map<String, Object> data = target(target);
        data.put("time", rfc3339(time(newTime)));
        data.put("data", fields(newTime, newFields));
        return add("amended", target.event().subject(), when, data);
    }

    /** Everything so far, in order of sequence. */
    public List<StoredEvent> all() {
        return List.copyOf(all);
    }

    /** The events of one subject. */
    public List<StoredEvent> of(String subject) {
        return all.stream().filter(e -> e.event().subject().equals(subject)).toList();
    }

    /** An instant by this log's clocks. */
    public Instant instant(String when) {
        return time(when).toInstant();
    }

    private StoredEvent add(String type, String subject, String when, Map<String, Object> data) {
        long sequence = all.size() + 1L;
        OffsetDateTime time = time(when);
        Map<String, Object> event = new LinkedHashMap<>();
        event.put("specversion", "1.0");
        event.put("id", "e" + sequence);
        event.put("source", SOURCE);
        event.put("type", type);
        event.put("subject", subject);
        event.put("time", rfc3339(time));
        event.put("recordedtime", rfc3339(recorded == null ? time : recorded));
        event.put("data", data);
        EventReader.Reading reading = EventReader.recorded().read(JSON.valueToTree(event));
        if (!reading.sound()) {
            throw new IllegalArgumentException(type + " of " + subject + ": " + reading.faults());
        }
        StoredEvent stored = new StoredEvent(sequence, "", reading.event());
        all.add(stored);
        return stored;
    }

    private static Map<String, Object> target(StoredEvent target) {
        Map<String, Object> data = new LinkedHashMap<>();
        data.put("event_source", target.event().source());
        data.put("event_id", target.event().id());
        return data;
    }

    private Map<String, Object> fields(String when, String fields) {
        Map<String, Object> data = new LinkedHashMap<>();
        Map<?, ?> read = (Map<?, ?>) new Load(LoadSettings.builder().build()).loadFromString("{" + fields + "}");
        read.forEach((name, value) -> data.put(name.toString(), value));
        if (when.length() == 10) {
            data.put("time_known", false);
        }
        return data;
    }

    private OffsetDateTime time(String when) {
        if (when.length() == 10) {
            return LocalDate.parse(when).atStartOfDay(zone).toOffsetDateTime();
        }
        if (when.charAt(10) == 'T') {
            return OffsetDateTime.parse(when);
        }
        return LocalDateTime.parse(when.replace(' ', 'T')).atZone(zone).toOffsetDateTime();
    }

    private static String rfc3339(OffsetDateTime time) {
        return DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(time);
    }
}
