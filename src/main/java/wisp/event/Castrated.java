package wisp.event;

/**
 * A bull calf was castrated.
 *
 * @param bothIn whether both testicles were below the ring; false makes it a calf to look at again
 */
public record Castrated(Method method, Boolean bothIn, Relief anaesthetic, Relief painRelief) implements EventData {

    /** How. */
    public enum Method implements Named {
        RING,
        CLAMP,
        SURGICAL
    }

    static Castrated read(DataReader in) {
        return new Castrated(
                in.requiredChoice("method", Method.class),
                in.flag("both_in"),
                in.relief("anaesthetic"),
                in.relief("pain_relief"));
    }

    @Override
    public EventType type() {
        return EventType.CASTRATED;
    }
}
