package wisp.event;

/**
 * A pen was cleaned out.
 *
 * @param material what was taken out or put down, null where not written
 * @param depthCm how deep it lay, centimetres
 */
public record PenCleaned(String material, Double depthCm) implements EventData {

    static PenCleaned read(DataReader in) {
        return new PenCleaned(in.text("material"), in.number("depth_cm", 0, 300));
    }

    @Override
    public EventType type() {
        return EventType.PEN_CLEANED;
    }
}
