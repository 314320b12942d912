package wisp.event;

/** A calf went to another pen. */
public record Moved(String pen) implements EventData {

    static Moved read(DataReader in) {
        return new Moved(in.requiredText("pen"));
    }

    @Override
    public EventType type() {
        return EventType.MOVED;
    }
}
