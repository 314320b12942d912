package wisp.history;

import java.time.Instant;

/**
 * How and when a life on the farm ended.
 *
 * @param time when; of an exit known only by date, 00:00 of that day or the day's last event of known time
 * @param timeKnown false where only the date is known
 * @param kind how
 * @param event the event that says so
 */
public record Exit(Instant time, boolean timeKnown, Kind kind, LifeEvent event) {

    /** How a life on the farm ended. */
    public enum Kind {
        BORN_DEAD,
        DIED,
        LEFT
    }

    /** True for a calf that was born dead or died. */
    public boolean death() {
        return kind != Kind.LEFT;
    }
}
