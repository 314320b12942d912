package wisp.event;

import java.time.OffsetDateTime;

/**
 * An earlier event is replaced, time and data whole.
 *
 * @param time when the replaced event really happened
 * @param dataJson its data as it should have been, a JSON object as text; held against the replaced event's type where
 *     that event is at hand
 */
public record Amended(String eventSource, String eventId, OffsetDateTime time, String dataJson, String reason)
        implements EventData {

    static Amended read(DataReader in) {
        return new Amended(
                in.requiredText("event_source"),
                in.requiredText("event_id"),
                in.requiredTime("time"),
                in.requiredObject("data"),
                in.text("reason"));
    }

    @Override
    public EventType type() {
        return EventType.AMENDED;
    }
}
