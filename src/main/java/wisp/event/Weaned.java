package wisp.event;

/** A calf was weaned. */
public record Weaned() implements EventData {

    static Weaned read(DataReader in) {
        return new Weaned();
    }

    @Override
    public EventType type() {
        return EventType.WEANED;
    }
}
