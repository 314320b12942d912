package wisp.indicator;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import wisp.cohort.Cohort;
import wisp.cohort.Herd;
import wisp.log.StoredEvent;
import wisp.testing.Calf;
import wisp.testing.Events;

/** What a calf is to every figure, and which events made it so. */
class CalfFiguresTest {
    private static final Definitions DEFINITIONS = Definitions.load(null);

    @Test
    void theDeathDecidesMortalityAndChangesWhatItCutsShort() {
        Events events = Events.london();
        Calf calf = new Calf(events, "A").born("2026-03-03 07:00", "alive: true");
        StoredEvent died = calf.at("2026-03-13 07:00", "died", "cause: accident");
        new Calf(events, "B").born("2026-06-30 07:00", "alive: true"); // moves the end of follow-up on
        Map<Long, List<CalfFigures.Use>> uses = uses(events);
        assertTrue(ids(uses.get(died.sequence()), true).contains("preweaning-mortality"));
        Set<String> changed = ids(uses.get(died.sequence()), false);
        assertTrue(changed.contains("diarrhoea-rate"), "fewer days at risk: " + changed);
        assertFalse(changed.contains("stillbirth"), "it lived through its first day either way");
    }

    @Test
    void theSecondTagDecidesAndTheFirstIsUsed() {
        Events events = Events.london();
        Calf calf = new Calf(events, "A").born("2026-03-03 07:00", "alive: true");
        StoredEvent one = calf.at("2026-03-04 07:00", "tag-fitted", "number: UK1, ear: left");
        StoredEvent two = calf.at("2026-03-05 07:00", "tag-fitted", "number: UK1, ear: right");
        StoredEvent weighed = calf.at("2026-03-06 07:00", "weighed", "weight_kg: 40");
        new Calf(events, "B").born("2026-06-30 07:00", "alive: true");
        Map<Long, List<CalfFigures.Use>> uses = uses(events);
        assertEquals(Set.of("tagged-inside-limit"), ids(uses.get(two.sequence()), true));
        assertEquals(Set.of("tagged-inside-limit"), ids(uses.get(one.sequence()), false));
        assertFalse(uses.containsKey(weighed.sequence()), "no figure weighs a calf at that age");
    }

    @Test
    void aTreatmentThatKeepsAnEpisodeOpenIsUsed() {
        Events events = Events.london();
        Calf calf = new Calf(events, "A").born("2026-03-03 07:00", "alive: true");
        calf.at("2026-03-10 07:00", "illness-found", "condition: pneumonia");
        StoredEvent treated = calf.at("2026-03-12 07:00", "treated", "medicine: x, condition: pneumonia");
        new Calf(events, "B").born("2026-06-30 07:00", "alive: true");
        assertEquals(Set.of("pneumonia-rate"), ids(uses(events).get(treated.sequence()), false));
    }

    @Test
    void verdictsAreThoseOfTheFigureItself() {
        Events events = Events.london();
        new Calf(events, "A").born("2026-03-03 07:00", "alive: true").at("2026-03-10 07:00", "died", "");
        new Calf(events, "B").born("2026-03-30", "alive: false");
        Cohort cohort = cohort(events);
        Selection all = Selection.NEWEST.ofSeason(Selection.ALL);
        for (int row = 0; row < 2; row++) {
            for (CalfFigures.InFigure figure : CalfFigures.verdicts(DEFINITIONS, cohort, row)) {
                int calf = row;
                Estimate whole = new Figures(DEFINITIONS).plain(figure.indicator(), cohort, all);
                List<Verdict> own = whole.verdicts().stream()
                        .filter(verdict -> verdict.row() == calf)
                        .toList();
                assertEquals(own, figure.verdicts(), figure.indicator().id());
            }
        }
    }

    private static Cohort cohort(Events events) {
        Herd herd = Herd.following();
        herd.apply(events.all());
        return herd.cohort();
    }

    private static Map<Long, List<CalfFigures.Use>> uses(Events events) {
        return CalfFigures.of(DEFINITIONS, cohort(events), 0).uses();
    }

    private static Set<String> ids(List<CalfFigures.Use> uses, boolean decisive) {
        return uses.stream()
                .filter(use -> use.decisive() == decisive)
                .map(use -> use.indicator().id())
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
