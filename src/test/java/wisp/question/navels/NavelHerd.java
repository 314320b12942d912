package wisp.question.navels;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import wisp.cohort.Cohort;
import wisp.cohort.Herd;
import wisp.event.Event;
import wisp.indicator.Definitions;
import wisp.indicator.Selection;
import wisp.indicator.Stratum;
import wisp.log.MemoryLog;
import wisp.log.StoredEvent;
import wisp.simulation.Model;
import wisp.simulation.Season;
import wisp.testing.Calf;
import wisp.testing.Events;

/** Calves built for the navels question, all born on one morning and followed to 45 days of age. */
final class NavelHerd {
    static final Definitions DEFINITIONS = Definitions.load((Path) null);
    private static final String BORN = "2026-03-01 08:00";

    private final Events events = Events.london();
    private String last = "2026-04-15 12:00";
    private int calves;

    /** Follow-up ends at this local time. */
    NavelHerd followedTo(String when) {
        last = when;
        return this;
    }

    /** Some calves of which the first ones fall ill on day 3. */
    NavelHerd add(String pen, Duration delay, int all, int sick) {
        for (int i = 0; i < all; i++) {
            Calf calf = calf(pen);
            if (delay != null) {
                calf.aged(delay, "navel-treated", "product: iodine, method: dip");
            }
            if (i < sick) {
                calf.aged(Duration.ofDays(3), "illness-found", "condition: navel-infection");
            }
        }
        return this;
    }

    /** One calf, born and nothing else. */
    Calf calf(String pen) {
        return calf(pen, BORN);
    }

    /** One calf born that day, nobody wrote when. */
    Calf dayCalf(String pen) {
        return calf(pen, BORN.substring(0, 10));
    }

    /** One calf born at a local time. */
    Calf calf(String pen, String born) {
        return new Calf(events, "calf-" + ++calves).born(born, "alive: true" + (pen == null ? "" : ", pen: " + pen));
    }

    Cohort cohort() {
        List<StoredEvent> all = new ArrayList<>(events.all());
        if (calves > 0) {
            events.add("noted", "yard", last, "text: nothing more");
            all = events.all();
        }
        Herd herd = Herd.following();
        herd.apply(all);
        return herd.cohort();
    }

    NavelsAnswer answer(Stratum by) {
        Selection all = Selection.NEWEST.ofSeason(Selection.ALL);
        return new NavelsQuestion(DEFINITIONS).of(cohort(), all.by(by));
    }

    NavelsAnswer answer() {
        return answer(cohort());
    }

    static NavelsAnswer answer(Cohort cohort) {
        return new NavelsQuestion(DEFINITIONS).of(cohort, Selection.NEWEST.ofSeason(Selection.ALL));
    }

    static Cohort simulated(Model model, int calves, long seed) {
        List<Event> season = Season.simulate(model, calves, seed);
        try (MemoryLog log = new MemoryLog(
                Clock.fixed(model.calendar().cut().toInstant(), model.farm().zone()))) {
            log.append(season, true);
            Herd herd = Herd.following();
            herd.apply(log.read(0, Integer.MAX_VALUE));
            return herd.cohort();
        }
    }
}
