package wisp.due;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import wisp.history.Exit;
import wisp.history.Life;
import wisp.history.LifeEvent;

/**
 * What one calf is to a proof.
 *
 * @param life the calf
 * @param row its row in the cohort
 * @param part how it counts
 * @param done what was done, null where nothing was
 * @param origin the moment from which time is counted
 * @param span the limit's window; its end is null where the limit sets none for this calf
 * @param rule the limit
 * @param breach why it was outside where the time does not say so, empty otherwise
 */
public record ProofCalf(
        Life life, int row, Part part, LifeEvent done, Instant origin, DueSpan span, DueRule rule, String breach) {

    /** How a calf counts. */
    public enum Part {
        /** Done inside the limit. */
        INSIDE,
        /** Done late, or not done when the limit was over or the calf left. */
        BREACH,
        /** The limit is not over yet. */
        PENDING,
        /** Dead before the limit was over, or no more there at its end, or its hour is not known. */
        LEFT_OUT
    }

    /** What ended a calf's waiting. */
    public enum Ending {
        STILL_OPEN,
        DONE,
        DIED,
        LEFT
    }

    /** What ended the waiting by the cut. */
    public Ending ending(Instant cut) {
        if (done != null) {
            return Ending.DONE;
        }
        return exit(cut).map(exit -> exit.death() ? Ending.DIED : Ending.LEFT).orElse(Ending.STILL_OPEN);
    }

    /** When the waiting ended, by the cut. */
    Instant ended(Instant cut) {
        return done != null ? done.time() : exit(cut).map(Exit::time).orElse(cut);
    }

    /** A moment on the proof's scale: exact hours, or calendar days after the day of the origin. */
    double time(Instant moment) {
        if (span.byHours()) {
            return Duration.between(origin, moment).toMillis() / 3_600_000.0;
        }
        var zone = life.farm().zone();
        return moment.atZone(zone).toLocalDate().toEpochDay()
                - origin.atZone(zone).toLocalDate().toEpochDay();
    }

    /** The limit on that scale: exact hours, or the last day that is inside; NaN where it sets none. */
    double limit() {
        if (span.closes() == null) {
            return Double.NaN;
        }
        return time(span.byHours() ? span.closes() : span.closes().minusNanos(1));
    }

    /** Whether the record came in when the limit was over, though the thing was done before. */
    public boolean enteredLate() {
        return part == Part.INSIDE && done != null && span.closes() != null && span.over(done.recorded());
    }

    private Optional<Exit> exit(Instant cut) {
        return Optional.ofNullable(life.exit()).filter(exit -> !exit.time().isAfter(cut));
    }
}
