package wisp.indicator;

import java.time.Duration;
import java.time.Instant;
import wisp.event.EventType;
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

    /** Whether the calf was alive and present at the cut, and just this old. */
    boolean cutAt(Duration age) {
        return end() == End.CUT && endAge().equals(age);
    }

    boolean bornDead() {
        return life.exit() != null && life.exit().kind() == Exit.Kind.BORN_DEAD;
    }

    /** Exact age at an event; one known only by the date of birth happened after the birth, nobody knows how long. */
    Duration ageAt(LifeEvent event) {
        Duration age = life.ageAt(event.time());
        boolean afterBirth = !event.timeKnown() && age.isZero() && event.type() != EventType.BIRTH;
        return afterBirth ? Duration.ofMillis(1) : age;
    }

    /** Whether an event known only by date could lie before an age or after it. */
    boolean straddles(LifeEvent event, Duration age) {
        return !event.timeKnown()
                && ageAt(event).compareTo(age) <= 0
                && ageAtEndOfDay(event).compareTo(age) > 0;
    }

    /**
     * Whether an event known only by date could lie inside the window or outside it: its day, as far as after birth,
     * has moments on both sides.
     */
    boolean ambiguous(LifeEvent event, Window window) {
        if (event.timeKnown()) {
            return false;
        }
        return window.holds(ageAt(event)) != window.holds(ageAtEndOfDay(event));
    }

    private Duration ageAtEndOfDay(LifeEvent event) {
        return life.ageAt(life.endOfDay(life.dayOfLife(event.time())).minusMillis(1));
    }

    static double days(Duration age) {
        return age.toMillis() / 86_400_000.0;
    }
}
