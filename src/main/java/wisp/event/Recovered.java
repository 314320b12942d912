package wisp.event;

/**
 * A calf was found well again.
 *
 * @param condition what it recovered from; null for everything it had
 */
public record Recovered(String condition) implements EventData {

    static Recovered read(DataReader in) {
        return new Recovered(in.condition("condition"));
    }

    @Override
    public EventType type() {
        return EventType.RECOVERED;
    }
}
