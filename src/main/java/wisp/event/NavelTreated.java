package wisp.event;

/**
 * A navel was treated.
 *
 * @param concentrationPercent strength of the product, percent
 */
public record NavelTreated(String product, Double concentrationPercent, Method method) implements EventData {

    /** How the product was put on. */
    public enum Method implements Named {
        SPRAY,
        DIP
    }

    static NavelTreated read(DataReader in) {
        return new NavelTreated(
                in.text("product"), in.number("concentration_percent", 0, 100), in.choice("method", Method.class));
    }

    @Override
    public EventType type() {
        return EventType.NAVEL_TREATED;
    }
}
