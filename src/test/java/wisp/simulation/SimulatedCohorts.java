package wisp.simulation;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.api.Table;
import wisp.cohort.Cohort;
import wisp.cohort.Herd;
import wisp.event.Event;
import wisp.event.FarmDescribed;
import wisp.history.FarmHistory;
import wisp.history.Life;
import wisp.history.LifeFold;
import wisp.log.StoredEvent;

/** Simulated seasons as cohorts, by way of the herd that the log feeds; nothing is written as JSON. */
final class SimulatedCohorts {
    private final Model model;
    private final Event farm;

    SimulatedCohorts(Model model) {
        this.model = model;
        Calendar calendar = model.calendar();
        this.farm = Season.farm(
                model, List.of(new FarmDescribed.Season(calendar.season(), calendar.from(), calendar.to())));
    }

    /** The lives of one season. */
    List<SimulatedLife> lives(int calves, long seed) {
        List<SimulatedLife> lives = new ArrayList<>(calves);
        Season.eachLife(model, calves, seed, lives::add);
        return lives;
    }

    /** One season in parts of so many lives, in order of birth, all read at the same cut. */
    void parts(int calves, long seed, int lives, Consumer<List<SimulatedLife>> to) {
        List<SimulatedLife> part = new ArrayList<>(lives);
        Season.eachLife(model, calves, seed, life -> {
            part.add(life);
            if (part.size() == lives) {
                to.accept(List.copyOf(part));
                part.clear();
            }
        });
        if (!part.isEmpty()) {
            to.accept(part);
        }
    }

    /**
     * These lives folded without the herd's table and tags, to be asked for only as a whole: the quick way to very
     * many. The tag numbers of one simulation never clash.
     */
    Cohort folded(List<SimulatedLife> lives) {
        FarmHistory history = FarmHistory.of(List.of(new StoredEvent(1, "", farm)));
        List<Life> folded = new ArrayList<>(lives.size());
        for (SimulatedLife life : lives) {
            List<StoredEvent> events = new ArrayList<>(life.events().size());
            life.events().forEach(event -> store(event, events));
            folded.add(LifeFold.fold(life.subject(), events, history, Set.of()));
        }
        Instant cut = model.calendar().cut().toInstant();
        return new Cohort(
                Table.create("none", StringColumn.create("season", folded.size())),
                folded,
                List.of(),
                history,
                Map.of(),
                Map.of(),
                List.of(),
                cut,
                lives.size());
    }

    /** These lives as the herd keeps them, with its table. */
    Cohort kept(List<SimulatedLife> lives) {
        List<StoredEvent> events = new ArrayList<>(lives.size() * 28 + 2);
        store(farm, events);
        lives.forEach(life -> life.events().forEach(event -> store(event, events)));
        store(Season.booksRead(model), events);
        Herd herd = Herd.following();
        herd.apply(events);
        return herd.cohort();
    }

    private static void store(Event event, List<StoredEvent> to) {
        to.add(new StoredEvent(to.size() + 1L, "", event));
    }
}
