package wisp.event;

/** A calf was registered with the authority. */
public record Registered(String document) implements EventData {

    static Registered read(DataReader in) {
        return new Registered(in.text("document"));
    }

    @Override
    public EventType type() {
        return EventType.REGISTERED;
    }
}
