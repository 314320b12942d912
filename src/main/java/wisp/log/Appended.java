package wisp.log;

import java.util.List;

/**
 * What came of an append.
 *
 * @param outcomes one an event offered, in their order
 * @param stored the events that are new in the log, in order of sequence
 * @param last the sequence of the newest event in the log afterwards
 */
public record Appended(List<Outcome> outcomes, List<StoredEvent> stored, long last) {

    /** What became of one event. */
    public enum Outcome {
        /** It is in the log now. */
        ACCEPTED,
        /** It was in the log already, word for word. */
        DUPLICATE,
        /** The log has another event of that source and id; this one was kept out. */
        CONFLICT,
        /** Sound, but kept out because another of its batch was not. */
        HELD_BACK
    }

    /** How many events had this outcome. */
    public long count(Outcome outcome) {
        return outcomes.stream().filter(outcome::equals).count();
    }
}
