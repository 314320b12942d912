package wisp.event;

/** A pen was cleaned out. */
public record PenCleaned() implements EventData {

    static PenCleaned read(DataReader in) {
        return new PenCleaned();
    }

    @Override
    public EventType type() {
        return EventType.PEN_CLEANED;
    }
}
