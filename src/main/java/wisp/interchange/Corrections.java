package wisp.interchange;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import wisp.event.Amended;
import wisp.event.Event;
import wisp.event.Retracted;
import wisp.log.EventLog;

/**
 * What a log's corrections have left of its events, for formats that know only facts: an event that a standing
 * retraction names is gone; of several standing amendments the last in sequence counts. A correction stands unless it
 * is itself retracted.
 */
final class Corrections {

    /** An event's name. */
    private record Name(String source, String id) {}

    private final Map<Name, List<Name>> retractions = new HashMap<>();
    private final Map<Name, List<Event>> amendments = new HashMap<>();

    private Corrections() {}

    static Corrections of(EventLog log) {
        Corrections corrections = new Corrections();
        log.replay(0, stored -> corrections.take(stored.event()));
        return corrections;
    }

    private void take(Event event) {
        if (event.data() instanceof Retracted retracted) {
            retractions
                    .computeIfAbsent(new Name(retracted.eventSource(), retracted.eventId()), name -> new ArrayList<>())
                    .add(new Name(event.source(), event.id()));
        } else if (event.data() instanceof Amended amended) {
            amendments
                    .computeIfAbsent(new Name(amended.eventSource(), amended.eventId()), name -> new ArrayList<>())
                    .add(event);
        }
    }

    /** Whether a standing retraction names this event. */
    boolean retracted(Event event) {
        return retracted(new Name(event.source(), event.id()), new HashSet<>());
    }

    private boolean retracted(Name name, Set<Name> asking) {
        if (!asking.add(name)) {
            return false;
        }
        return retractions.getOrDefault(name, List.of()).stream().anyMatch(by -> !retracted(by, asking));
    }

    /** The last standing amendment of this event. */
    Optional<Amended> amended(Event event) {
        return amendments.getOrDefault(new Name(event.source(), event.id()), List.of()).stream()
                .filter(amendment -> !retracted(amendment))
                .reduce((earlier, later) -> later)
                .map(amendment -> (Amended) amendment.data());
    }
}
