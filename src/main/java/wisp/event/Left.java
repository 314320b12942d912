package wisp.event;

/** A calf left the farm alive. */
public record Left(Reason reason) implements EventData {

    /** Why it left. */
    public enum Reason implements Named {
        SOLD,
        TRANSFERRED
    }

    static Left read(DataReader in) {
        return new Left(in.choice("reason", Reason.class));
    }

    @Override
    public EventType type() {
        return EventType.LEFT;
    }
}
