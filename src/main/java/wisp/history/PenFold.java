package wisp.history;

import java.util.List;
import wisp.log.StoredEvent;

/** The events of a pen, or of any subject that is no animal, after corrections. */
public final class PenFold {
    private PenFold() {}

    /** The events that count, in order of time and sequence. */
    public static List<LifeEvent> fold(List<StoredEvent> events) {
        return Corrections.resolve(events).standing().stream()
                .sorted(LifeEvent.ORDER)
                .toList();
    }

    /** The corrections among them that could not be carried out. */
    public static List<Mark> marks(List<StoredEvent> events) {
        return Corrections.resolve(events).marks();
    }
}
