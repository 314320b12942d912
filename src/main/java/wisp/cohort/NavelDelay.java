package wisp.cohort;

import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import wisp.event.EventType;
import wisp.history.Life;
import wisp.history.LifeEvent;

/**
 * The class of the delay from birth to the first treatment of the navel within 24 h. Each class holds its upper bound.
 * A treatment known only by date stands at the start of its day (or at birth): where it comes first and may have been
 * within 24 h, the class is unknown.
 */
public enum NavelDelay {
    TO_15_MIN("0-15 min", 15),
    TO_60_MIN("15-60 min", 60),
    TO_2_H("1-2 h", 120),
    TO_6_H("2-6 h", 360),
    TO_24_H("6-24 h", 1440),
    NONE_BY_24_H("none by 24 h", Integer.MAX_VALUE),
    UNKNOWN("unknown", -1);

    private final String word;
    private final int minutesMost;

    NavelDelay(String word, int minutesMost) {
        this.word = word;
        this.minutesMost = minutesMost;
    }

    /** The class's name in figures. */
    public String word() {
        return word;
    }

    /** All names in order. */
    public static List<String> words() {
        return Arrays.stream(values()).map(NavelDelay::word).toList();
    }

    /**
     * Minutes from birth to the first treatment within 24 h; NaN where there is none or the hour of birth or of the
     * treatment is not known.
     */
    static double minutes(Life life) {
        LifeEvent first = firstTreatment(life);
        if (!life.birthTimeKnown() || first == null || !first.timeKnown()) {
            return Double.NaN;
        }
        return life.ageAt(first.time()).toNanos() / 60e9;
    }

    /** The class of a calf. */
    public static NavelDelay of(Life life) {
        LifeEvent first = firstTreatment(life);
        if (!life.birthTimeKnown() || (first != null && !first.timeKnown())) {
            return UNKNOWN;
        }
        if (first == null) {
            return NONE_BY_24_H;
        }
        double minutes = minutes(life);
        return Arrays.stream(values())
                .filter(c -> minutes <= c.minutesMost)
                .findFirst()
                .orElse(NONE_BY_24_H);
    }

    /** The first treatment of the navel within 24 h, or null. */
    public static LifeEvent firstTreatment(Life life) {
        return life.events().stream()
                .filter(event -> event.type() == EventType.NAVEL_TREATED)
                .filter(event -> life.ageAt(event.time()).compareTo(Duration.ofHours(24)) <= 0)
                .findFirst()
                .orElse(null);
    }
}
