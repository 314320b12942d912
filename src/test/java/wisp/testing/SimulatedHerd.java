package wisp.testing;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import wisp.cohort.Cohort;
import wisp.cohort.Herd;
import wisp.event.Event;
import wisp.log.StoredEvent;
import wisp.simulation.Model;
import wisp.simulation.Season;

/** A simulated season as a cohort, each event recorded when it happened unless it says otherwise. */
public final class SimulatedHerd {
    private SimulatedHerd() {}

    /** The cohort of one season of so many calves. */
    public static Cohort season(Model model, int calves, long seed) {
        List<StoredEvent> stored = new ArrayList<>();
        for (Event event : Season.simulate(model, calves, seed)) {
            stored.add(new StoredEvent(stored.size() + 1L, "", recorded(event)));
        }
        Herd herd = Herd.following();
        herd.apply(stored);
        return herd.cohort();
    }

    private static Event recorded(Event event) {
        OffsetDateTime recorded = event.recordedTime() == null ? event.time() : event.recordedTime();
        return new Event(
                event.source(),
                event.id(),
                event.subject(),
                event.time(),
                event.timeKnown(),
                recorded,
                event.recordedBy(),
                event.data(),
                event.json());
    }
}
