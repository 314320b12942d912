package wisp.indicator;

import java.time.Duration;
import java.util.Locale;
import java.util.Optional;
import wisp.event.Birth;
import wisp.history.LifeEvent;

/** Decides whether a calf enters a figure's population at all. */
final class Entry {
    static final String BIRTH_TIME_UNKNOWN = "birth-time-unknown";
    static final String EVENT_TIME_UNKNOWN = "event-time-unknown";
    static final String LEFT_BEFORE_SETTLED = "left-before-settled";

    private Entry() {}

    /** The verdict on a calf that does not enter, or empty where it does. */
    static Optional<Verdict> refused(Indicator indicator, FollowedLife followed) {
        Population population = indicator.population();
        Birth birth = followed.life().birth();
        if (!population.bornDeadToo() && followed.bornDead()) {
            return Optional.of(Verdict.outside(followed.row(), "born dead"));
        }
        if (population.sex() != null && birth.sex() != population.sex()) {
            String reason = "not recorded as " + population.sex().name().toLowerCase(Locale.ROOT);
            return Optional.of(Verdict.outside(followed.row(), reason));
        }
        if (population.leaveOutEntire() && Boolean.TRUE.equals(birth.keepEntire())) {
            return Optional.of(Verdict.outside(followed.row(), "to stay entire"));
        }
        if (indicator.needsHours() && !followed.life().birthTimeKnown()) {
            return Optional.of(Verdict.excluded(
                    followed.row(), BIRTH_TIME_UNKNOWN, followed.life().born()));
        }
        Age presentAt = population.presentAt();
        if (presentAt == null || followed.cutAt(presentAt.exact())) {
            return Optional.empty();
        }
        return notPresent(indicator, followed, presentAt);
    }

    /** A calf is present past an age when its follow-up goes on after it. */
    static Optional<Verdict> notPresent(Indicator indicator, FollowedLife followed, Age present) {
        Duration age = present.exact();
        String text = present.text();
        if (indicator.needsHours() && followed.end() != FollowedLife.End.CUT) {
            LifeEvent exit = followed.life().exit().event();
            if (followed.straddles(exit, age)) {
                return Optional.of(Verdict.excluded(followed.row(), EVENT_TIME_UNKNOWN, exit));
            }
        }
        if (followed.endAge().compareTo(age) > 0) {
            return Optional.empty();
        }
        return Optional.of(
                switch (followed.end()) {
                    case DEATH -> Verdict.outside(followed.row(), "dead by " + text);
                    case LEFT -> Verdict.outside(followed.row(), "left by " + text);
                    case CUT -> Verdict.pending(followed.row());
                });
    }
}
