package wisp.question.season;

import java.time.Duration;
import wisp.history.Exit;
import wisp.history.Life;

/** The ages in which deaths are told apart: the windows of the figures, the longest of them in three. */
public enum DeathAge {
    BORN_DEAD("born dead"),
    FIRST_DAY("to 24 h"),
    FIRST_WEEK("24 h to 7 d"),
    FOURTH_WEEK("7 to 28 d"),
    WEANING("28 to 60 d"),
    LATER("after 60 d");

    private final String words;

    DeathAge(String words) {
        this.words = words;
    }

    /** In words. */
    public String words() {
        return words;
    }

    /** Where a death falls; each age is closed at its end. */
    static DeathAge of(Life life) {
        if (life.exit().kind() == Exit.Kind.BORN_DEAD) {
            return BORN_DEAD;
        }
        Duration age = life.ageAt(life.exit().time());
        if (age.compareTo(Duration.ofHours(24)) <= 0) {
            return FIRST_DAY;
        } else if (age.compareTo(Duration.ofDays(7)) <= 0) {
            return FIRST_WEEK;
        } else if (age.compareTo(Duration.ofDays(28)) <= 0) {
            return FOURTH_WEEK;
        }
        return age.compareTo(Duration.ofDays(60)) <= 0 ? WEANING : LATER;
    }

    /** Whether it counts in pre-weaning mortality, 24 h to 60 days. */
    boolean beforeWeaning() {
        return this == FIRST_WEEK || this == FOURTH_WEEK || this == WEANING;
    }
}
