package wisp.event;

/**
 * How dirty a calf was.
 *
 * @param score 0 clean to 3 covered
 * @param pen where it lay then, null where not written
 */
public record CleanlinessScored(int score, String pen) implements EventData {

    static CleanlinessScored read(DataReader in) {
        return new CleanlinessScored(in.requiredWhole("score", 0, 3), in.text("pen"));
    }

    @Override
    public EventType type() {
        return EventType.CLEANLINESS_SCORED;
    }
}
