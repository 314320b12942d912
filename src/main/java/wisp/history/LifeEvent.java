package wisp.history;

import java.time.Instant;
import java.util.Comparator;
import wisp.event.EventData;
import wisp.event.EventType;

/**
 * An event as it stands after corrections: the amended form where it was amended.
 *
 * @param sequence the log's number of the event first recorded, which amendments keep
 * @param source the event's source, with {@code id} its name
 * @param id the event's id
 * @param time when it happened; of an event known only by date, 00:00 of that day
 * @param timeKnown false where only the date is known
 * @param recorded when it was recorded; of an amended event, when the amendment was
 * @param recordedBy who recorded it, null where not said
 * @param amended true where an amendment gave it its present form
 * @param data what happened
 */
public record LifeEvent(
        long sequence,
        String source,
        String id,
        Instant time,
        boolean timeKnown,
        Instant recorded,
        String recordedBy,
        boolean amended,
        EventData data) {

    /** The order in which a life is folded. */
    public static final Comparator<LifeEvent> ORDER =
            Comparator.comparing(LifeEvent::time).thenComparing(LifeEvent::sequence);

    /** The type of event. */
    public EventType type() {
        return data.type();
    }

    LifeEvent at(Instant other) {
        return new LifeEvent(sequence, source, id, other, timeKnown, recorded, recordedBy, amended, data);
    }
}
