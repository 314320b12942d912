package wisp.history;

import java.time.ZoneId;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wisp.event.Event;
import wisp.log.StoredEvent;

/** A life as it would be had one of its events never been recorded; so one sees what hangs on that event. */
public final class Supposed {
    private Supposed() {}

    /**
     * The life without an event that counts in it.
     *
     * @param farm the farm through time
     */
    public static Life without(Life life, LifeEvent event, FarmHistory farm) {
        ZoneId zone = life.farm().zone();
        Stream<LifeEvent> marked =
                life.marks().stream().map(Mark::event).filter(one -> !one.type().isCorrection());
        List<StoredEvent> left = Stream.concat(life.events().stream(), marked)
                .filter(one -> one.sequence() != event.sequence())
                .map(one -> stored(life.key(), one, zone))
                .toList();
        Set<Long> tagsInUse = life.marks().stream()
                .filter(mark -> mark.kind() == Mark.Kind.TAG_IN_USE)
                .map(mark -> mark.event().sequence())
                .collect(Collectors.toSet());
        return LifeFold.fold(life.key(), left, farm, tagsInUse);
    }

    private static StoredEvent stored(String key, LifeEvent event, ZoneId zone) {
        Event recorded = new Event(
                event.source(),
                event.id(),
                key,
                event.time().atZone(zone).toOffsetDateTime(),
                event.timeKnown(),
                event.recorded().atZone(zone).toOffsetDateTime(),
                event.recordedBy(),
                event.data(),
                "");
        return new StoredEvent(event.sequence(), "", recorded);
    }
}
