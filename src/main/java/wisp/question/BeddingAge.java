package wisp.question;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import wisp.event.EventType;
import wisp.history.LifeEvent;

/** How long a pen's bedding had lain, by the beddings on record. */
record BeddingAge(Map<String, List<LifeEvent>> pens) {
    private static final double DAY = Duration.ofDays(1).toMillis();

    /** Exact days from the last bedding at or before a time; not a number where none is on record. */
    double daysAt(String pen, Instant time) {
        double days = Double.NaN;
        for (LifeEvent event : pens.getOrDefault(pen, List.of())) {
            if (event.type() == EventType.PEN_BEDDED && !event.time().isAfter(time)) {
                days = Duration.between(event.time(), time).toMillis() / DAY;
            }
        }
        return days;
    }

    /** Whether a place was ever bedded or cleaned out, by the records: what tells a kept pen from a passage. */
    boolean kept(String pen) {
        return pens.getOrDefault(pen, List.of()).stream()
                .anyMatch(event -> event.type() == EventType.PEN_BEDDED || event.type() == EventType.PEN_CLEANED);
    }
}
