package wisp.event;

/** A calf was weighed. */
public record Weighed(double weightKg) implements EventData {

    static Weighed read(DataReader in) {
        return new Weighed(in.requiredNumber("weight_kg", 3, 2000));
    }

    @Override
    public EventType type() {
        return EventType.WEIGHED;
    }
}
