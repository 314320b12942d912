package wisp.event;

/** A tissue sample was taken, as by an ear tag. */
public record TissueSampled(String tagNumber) implements EventData {

    static TissueSampled read(DataReader in) {
        return new TissueSampled(in.text("tag_number"));
    }

    @Override
    public EventType type() {
        return EventType.TISSUE_SAMPLED;
    }
}
