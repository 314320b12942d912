package wisp.event;

/** A calf died or was put down. */
public record Died(String cause, Boolean euthanised) implements EventData {

    static Died read(DataReader in) {
        return new Died(in.text("cause"), in.flag("euthanised"));
    }

    @Override
    public EventType type() {
        return EventType.DIED;
    }
}
