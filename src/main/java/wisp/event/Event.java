package wisp.event;

import java.time.OffsetDateTime;

/**
 * One husbandry event: the CloudEvents 1.0 envelope and what it says.
 *
 * @param source who sent it; with {@code id} it names the event for good
 * @param id the sender's own name for it, unique for the source
 * @param subject the animal's or pen's key, or {@code farm}
 * @param time when it happened
 * @param timeKnown false where only the date is known; {@code time} is then 00:00 of that day in the farm's zone
 * @param recordedTime when it was written down; null until the log has set it
 * @param recordedBy who wrote it down, null where not said
 * @param data what happened
 * @param json the whole event as JSON text, as it was sent, without what only the log may say
 */
public record Event(
        String source,
        String id,
        String subject,
        OffsetDateTime time,
        boolean timeKnown,
        OffsetDateTime recordedTime,
        String recordedBy,
        EventData data,
        String json) {

    /** The type of event. */
    public EventType type() {
        return data.type();
    }
}
