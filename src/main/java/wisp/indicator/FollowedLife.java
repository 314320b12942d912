package wisp.indicator;

import java.time.Duration;
import java.time.Instant;
import wisp.history.Exit;
import wisp.history.Life;
import wisp.history.LifeEvent;

/**
 * A life and where its follow-up ends: the first of death, leaving and the cut.
 *
 * @param row its row in the cohort
 * @param cut where all follow-up ends
 */
record FollowedLife(int row, Life life, Instant cut) {

    /** Why follow-up ended. */
    enum End {
        DEATH,
        LEFT,
        CUT
    }

    End end() {
        Exit exit = life.exit();
        if (exit == null || exit.time().isAfter(cut)) {
            return End.CUT;
        }
        return exit.death() ? End.DEATH : End.LEFT;
    }

    Instant endTime() {
        return end() == End.CUT ? cut : life.exit().time();
    }

    /** Exact age at the end of follow-up. */
    Duration endAge() {
        return life.ageAt(endTime());
    }

    boolean bornDead() {
        return life.exit() != null && life.exit().kind() == Exit.Kind.BORN_DEAD;
    }

    /** Exact age at an event. */
    Duration ageAt(LifeEvent event) {
        return life.ageAt(event.time());
    }

    /**
     * Whether an event known only by date could lie inside the window or outside it: its day, as far as after birth,
     * has moments on both sides.
     */
    boolean ambiguous(LifeEvent event, Window window) {
        if (event.timeKnown()) {
            return false;
        }
        Instant dayEnd = life.endOfDay(life.dayOfLife(event.time())).minusMillis(1);
        return window.holds(ageAt(event)) != window.holds(life.ageAt(dayEnd));
    }

    static double days(Duration age) {
        return age.toMillis() / 86_400_000.0;
    }
}
