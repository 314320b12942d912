package wisp.event;

/**
 * A calf had colostrum.
 *
 * @param volumeL litres, null where not measured
 * @param brixPercent the colostrum's Brix reading, percent
 */
public record ColostrumFed(Double volumeL, Method method, Double brixPercent) implements EventData {

    /** How it got in. */
    public enum Method implements Named {
        SUCKLED,
        BOTTLE,
        TUBE
    }

    static ColostrumFed read(DataReader in) {
        return new ColostrumFed(
                in.number("volume_l", 0, 12), in.choice("method", Method.class), in.number("brix_percent", 0, 50));
    }

    @Override
    public EventType type() {
        return EventType.COLOSTRUM_FED;
    }
}
