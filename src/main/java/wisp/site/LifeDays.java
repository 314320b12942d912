package wisp.site;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Set;
import wisp.chart.Mark;
import wisp.event.EventType;
import wisp.history.Life;
import wisp.history.LifeEvent;

/**
 * A calf's line of time in days of life: day 0 is the day of birth, and a whole number stands where that day begins by
 * the farm's clocks, so that a limit "by day 20" ends where 21 stands.
 */
record LifeDays(Life life) {

    /** Where a moment stands. */
    double at(Instant time) {
        ZoneId zone = life.farm().zone();
        LocalDate day = time.atZone(zone).toLocalDate();
        Instant start = day.atStartOfDay(zone).toInstant();
        Instant next = day.plusDays(1).atStartOfDay(zone).toInstant();
        double share = Duration.between(start, time).toMillis()
                / (double) Duration.between(start, next).toMillis();
        return life.dayOfLife(time) + share;
    }

    /** The events of some types, each at its place and opening its line in the list of events. */
    List<Mark> marks(Set<EventType> types) {
        return life.events().stream()
                .filter(event -> types.contains(event.type()))
                .map(this::mark)
                .toList();
    }

    /** An event at its place. */
    Mark mark(LifeEvent event) {
        String details = EventWords.details(event);
        String when = "day " + life.dayOfLife(event.time()) + ", "
                + Shown.moment(event.time(), event.timeKnown(), life.farm().zone());
        return Mark.at(at(event.time()), 0, EventWords.of(event))
                .saying(details.isEmpty() ? when : details + ", " + when)
                .to("#" + CalfPage.anchor(event));
    }
}
