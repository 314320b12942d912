package wisp.question.navels;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import wisp.event.EventType;
import wisp.history.Life;
import wisp.history.LifeEvent;

/**
 * On which side of 60 minutes the first treatment of a navel can lie, where an hour was not written down. A day without
 * its hour runs from the midnight that begins it, or from birth, to the midnight that ends it.
 */
public enum PossibleDelay {
    /** Within 60 minutes, whatever the hours were. */
    EARLY,
    /** Later, or not at all, whatever the hours were. */
    LATE,
    /** Either. */
    EITHER;

    private static final Duration EARLY_BY = Duration.ofMinutes(60);

    static PossibleDelay of(Life life) {
        List<LifeEvent> treatments = life.events().stream()
                .filter(event -> event.type() == EventType.NAVEL_TREATED)
                .toList();
        if (treatments.isEmpty()) {
            return LATE;
        }
        Comparator<Instant> order = Comparator.naturalOrder();
        Instant first = treatments.stream().map(LifeEvent::time).min(order).orElseThrow();
        Instant last = treatments.stream()
                .map(event -> event.timeKnown() ? event.time() : endOfDay(life, event))
                .min(order)
                .orElseThrow();
        Instant bornLast = life.birthTimeKnown() ? life.born().time() : life.endOfDay(0);
        if (Duration.between(bornLast, first).compareTo(EARLY_BY) > 0) {
            return LATE;
        }
        return life.ageAt(last).compareTo(EARLY_BY) <= 0 ? EARLY : EITHER;
    }

    private static Instant endOfDay(Life life, LifeEvent event) {
        return life.endOfDay(life.dayOfLife(event.time()));
    }
}
