package wisp.indicator;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wisp.cohort.Cohort;
import wisp.cohort.Herd;
import wisp.event.Event;
import wisp.log.StoredEvent;
import wisp.simulation.Season;
import wisp.simulation.StandardModel;
import wisp.testing.Calf;
import wisp.testing.Events;
import wisp.testing.RandomLog;

/** What is kept from one cohort to the next changes no figure: each is what a first calculation gives. */
class SettledVerdictsTest {
    private static final Definitions DEFINITIONS = Definitions.load(null);
    private static final Selection ALL = Selection.NEWEST.ofSeason(Selection.ALL);

    private static void same(Figures followed, Cohort cohort, String when) {
        Figures first = new Figures(DEFINITIONS);
        for (Indicator indicator : DEFINITIONS.indicators()) {
            Estimate expected = first.plain(indicator, cohort, ALL);
            assertEquals(expected, followed.plain(indicator, cohort, ALL), when + ", " + indicator.id());
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void afterEveryBatchOfAnyEventsEachFigureIsThatOfAFirstCalculation(long seed) {
        System.out.println("SettledVerdictsTest, any events: seed " + seed);
        Random random = new Random(seed);
        for (int round = 0; round < 6; round++) {
            follow(RandomLog.of(random.nextLong(), 120), 1 + random.nextInt(6), random, "seed " + seed);
        }
    }

    @Test
    void asASeasonGoesOnEachFigureIsThatOfAFirstCalculation() {
        List<Event> events = Season.simulate(StandardModel.model(), 60, 7);
        List<StoredEvent> log = new ArrayList<>();
        events.forEach(event -> log.add(new StoredEvent(log.size() + 1L, "", event)));
        follow(log, 80, new Random(7), "season");
    }

    private static void follow(List<StoredEvent> log, int most, Random random, String when) {
        Figures figures = new Figures(DEFINITIONS);
        Herd herd = Herd.following();
        for (int from = 0, to; from < log.size(); from = to) {
            to = Math.min(log.size(), from + 1 + random.nextInt(most));
            herd.apply(log.subList(from, to));
            same(figures, herd.cohort(), when + ", after event " + to);
        }
    }

    @Test
    void anOlderCohortThatIsStillReadIsJudgedByItsOwnCut() {
        Events events = Events.london();
        new Calf(events, "A").born("2026-03-03 07:00", "alive: true");
        int sofar = events.all().size();
        new Calf(events, "B").born("2026-06-30 07:00", "alive: true");
        Herd herd = Herd.following();
        herd.apply(events.all().subList(0, sofar));
        Cohort older = herd.cohort();
        herd.apply(events.all());
        Cohort newer = herd.cohort();
        Figures figures = new Figures(DEFINITIONS);
        Indicator mortality = DEFINITIONS.indicator("preweaning-mortality").orElseThrow();
        figures.plain(mortality, older, ALL.ofSeason("2026"));
        assertEquals(
                0,
                figures.plain(mortality, newer, ALL).verdicts().stream()
                        .filter(verdict -> verdict.row() == 0 && verdict.pending())
                        .count());
        same(figures, older, "the older");
        assertTrue(figures.plain(mortality, older, ALL).verdicts().get(0).pending());
    }

    @Test
    void onlyTheLifeThatAnEventTouchesAndThoseStillOpenAreJudgedAgain() {
        Events events = Events.london();
        new Calf(events, "A").born("2026-01-03 07:00", "alive: true");
        new Calf(events, "B").born("2026-01-04 07:00", "alive: true");
        new Calf(events, "C").born("2026-06-29 07:00", "alive: true");
        Herd herd = Herd.following();
        herd.apply(events.all());
        Figures figures = new Figures(DEFINITIONS);
        Indicator mortality = DEFINITIONS.indicator("preweaning-mortality").orElseThrow();
        List<Verdict> before = figures.plain(mortality, herd.cohort(), ALL).verdicts();
        new Calf(events, "B").at("2026-07-02 07:00", "died", "cause: accident");
        herd.apply(events.all());
        List<Verdict> after = figures.plain(mortality, herd.cohort(), ALL).verdicts();
        assertSame(before.get(0), after.get(0), "settled, and nothing happened to it");
        assertTrue(before.get(2).pending() && after.get(2).pending());
        assertTrue(after.get(2).days() > before.get(2).days(), "it was followed further");
    }
}
