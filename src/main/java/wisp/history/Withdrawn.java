package wisp.history;

import wisp.log.StoredEvent;

/**
 * An event that no longer stands in the form in which it was recorded, and the correction that is the cause.
 *
 * @param event the event as first recorded
 * @param by the retraction or amendment
 */
public record Withdrawn(LifeEvent event, LifeEvent by) {
    static Withdrawn of(StoredEvent event, StoredEvent by) {
        return new Withdrawn(Corrections.asRecorded(event), Corrections.asRecorded(by));
    }
}
