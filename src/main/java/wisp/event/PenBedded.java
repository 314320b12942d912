package wisp.event;

/** A pen got fresh bedding. */
public record PenBedded(String material, Double depthCm) implements EventData {

    static PenBedded read(DataReader in) {
        return new PenBedded(in.text("material"), in.number("depth_cm", 0, 300));
    }

    @Override
    public EventType type() {
        return EventType.PEN_BEDDED;
    }
}
