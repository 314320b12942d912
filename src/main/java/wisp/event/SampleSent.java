package wisp.event;

/** A sample went to a laboratory. */
public record SampleSent(String tagNumber, String laboratory) implements EventData {

    static SampleSent read(DataReader in) {
        return new SampleSent(in.text("tag_number"), in.text("laboratory"));
    }

    @Override
    public EventType type() {
        return EventType.SAMPLE_SENT;
    }
}
