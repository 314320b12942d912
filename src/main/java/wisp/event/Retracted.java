package wisp.event;

/** An earlier event is withdrawn. */
public record Retracted(String eventSource, String eventId, String reason) implements EventData {

    static Retracted read(DataReader in) {
        return new Retracted(in.requiredText("event_source"), in.requiredText("event_id"), in.text("reason"));
    }

    @Override
    public EventType type() {
        return EventType.RETRACTED;
    }
}
