package wisp.history;

import java.util.List;
import wisp.log.StoredEvent;

/**
 * What is recorded of a pen, of the farm, or of any other subject that is no animal, after corrections.
 *
 * @param events the events that count, in order of time and sequence
 * @param withdrawn events that a correction withdrew or replaced
 * @param marks corrections that could not be carried out
 */
public record Annals(List<LifeEvent> events, List<Withdrawn> withdrawn, List<Mark> marks) {

    /** The annals that a subject's events tell. */
    public static Annals of(List<StoredEvent> events) {
        Corrections.Resolved resolved = Corrections.resolve(events);
        List<LifeEvent> standing =
                resolved.standing().stream().sorted(LifeEvent.ORDER).toList();
        return new Annals(standing, resolved.withdrawn(), resolved.marks());
    }
}
