package wisp.event;

/** A laboratory's result came back. */
public record SampleResult(Result result, String tagNumber, String laboratory, String test) implements EventData {

    /** What the laboratory said. */
    public enum Result implements Named {
        NEGATIVE,
        POSITIVE,
        INCONCLUSIVE
    }

    static SampleResult read(DataReader in) {
        return new SampleResult(
                in.requiredChoice("result", Result.class),
                in.text("tag_number"),
                in.text("laboratory"),
                in.text("test"));
    }

    @Override
    public EventType type() {
        return EventType.SAMPLE_RESULT;
    }
}
