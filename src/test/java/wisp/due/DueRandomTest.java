package wisp.due;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import wisp.cohort.Cohort;
import wisp.cohort.Herd;
import wisp.event.EventType;
import wisp.history.Life;
import wisp.indicator.Definitions;
import wisp.indicator.Selection;
import wisp.log.StoredEvent;
import wisp.testing.RandomLog;

/** What holds of any lives whatever: seeds 1 to 100, six calves each. */
class DueRandomTest {
    private static final int LOGS = 100;
    private static final int EVENTS = 120;
    private static final Instant FIRST = Instant.parse("2026-03-20T00:00:00Z");
    private static final Due DUE = new Due(Definitions.load(null));

    private interface Check {
        void of(Life life, int row, Instant at, String seed);
    }

    private static void everyLife(Check check) {
        int lives = 0;
        for (long seed = 1; seed <= LOGS; seed++) {
            Herd herd = Herd.following();
            herd.apply(RandomLog.of(seed, EVENTS));
            Cohort cohort = herd.cohort();
            for (int row = 0; row < cohort.lives().size(); row++) {
                for (int days = 0; days < 60; days += 7) {
                    Instant at = FIRST.plus(Duration.ofHours(24L * days + 7));
                    check.of(cohort.lives().get(row), row, at, "seed " + seed + ", row " + row + ", at " + at);
                }
                lives++;
            }
        }
        assertTrue(lives >= 500, "only " + lives + " lives");
    }

    @Test
    void everyStepStandsInOneStateThatItsWindowAllows() {
        everyLife((life, row, at, seed) -> {
            Set<String> steps = new HashSet<>();
            for (DueItem item : DUE.of(life, row, at)) {
                assertTrue(steps.add(item.step()), () -> seed + ": twice " + item.step());
                assertEquals(item.state() == DueState.DONE, item.done() != null, seed);
                assertEquals(item.listed(), item.listed() && item.state().open(), seed);
                if (item.state() == DueState.OVERDUE || item.state() == DueState.IMPOSSIBLE_NOW) {
                    assertTrue(item.span().over(at), () -> seed + ": " + item.step() + " is not over");
                }
                boolean sometime =
                        item.state() == DueState.DUE_NOW && item.span().closes() != null;
                assertFalse(sometime && item.span().over(at), () -> seed + ": " + item.step() + " is over");
            }
        });
    }

    @Test
    void aStepIsDoneByAnEventOfThatLifeAndNoOther() {
        everyLife((life, row, at, seed) -> DUE.of(life, row, at).stream()
                .filter(item -> item.done() != null)
                .forEach(item -> assertTrue(life.events().contains(item.done()), seed)));
    }

    @Test
    void aCalfThatIsGoneIsOnNoList() {
        everyLife((life, row, at, seed) -> {
            boolean gone = life.exit() != null;
            assertFalse(
                    gone && DUE.of(life, row, at).stream().anyMatch(DueItem::listed),
                    () -> seed + ": England asks nothing of it");
        });
    }

    @Test
    void aRegistrationTakesItsStepOffTheListAndAnEarlierDayShowsItAgain() {
        int shown = 0;
        for (long seed = 1; seed <= LOGS; seed++) {
            List<StoredEvent> events = RandomLog.withDistinctTimes(seed, EVENTS);
            for (StoredEvent stored : events) {
                if (stored.event().type() == EventType.REGISTERED) {
                    Instant known = stored.event().recordedTime().toInstant();
                    shown += turns(events, stored, known, "seed " + seed) ? 1 : 0;
                }
            }
        }
        assertTrue(shown > 20, "only " + shown + " registrations");
    }

    private static boolean turns(List<StoredEvent> events, StoredEvent registered, Instant known, String seed) {
        String calf = registered.event().subject();
        DueItem before = register(events, calf, known.minusMillis(1));
        DueItem after = register(events, calf, known);
        boolean counts = before != null
                && before.done() == null
                && after != null
                && after.done() != null
                && after.done().sequence() == registered.sequence();
        if (counts) {
            assertFalse(after.listed(), seed);
            assertTrue(before.state() != DueState.DONE, seed);
        }
        return counts;
    }

    private static DueItem register(List<StoredEvent> events, String calf, Instant asOf) {
        Herd herd = Herd.asOf(asOf);
        herd.apply(events);
        int row = herd.cohort().rowOf(calf);
        return row < 0
                ? null
                : DUE.of(herd.cohort().lives().get(row), row, asOf).stream()
                        .filter(item -> item.step().equals("register"))
                        .findFirst()
                        .orElse(null);
    }

    @Test
    void aStepOfSomebodyElseStandsBesideTheOthers() {
        Step step = calf -> List.of(calf.item(
                "weigh",
                "Weigh",
                EventType.WEIGHED,
                calf.days(0, 60),
                new DueRule(
                        "",
                        "by day 60",
                        calf.practice().steps().values().iterator().next().basis())));
        everyLife((life, row, at, seed) -> {
            List<DueItem> more = DUE.with(step).of(life, row, at);
            List<DueItem> known = DUE.of(life, row, at);
            assertEquals(known, more.subList(0, known.size()), seed);
            assertEquals(known.isEmpty() ? 0 : known.size() + 1, more.size(), seed);
        });
    }

    @Test
    void aListEndsWithWhatIsNoMorePossibleAndBeginsWithWhatClosesFirst() {
        for (long seed = 1; seed <= LOGS; seed++) {
            Herd herd = Herd.following();
            herd.apply(RandomLog.of(seed, EVENTS));
            DueList list = DueList.of(DUE, herd.cohort(), Selection.NEWEST, FIRST.plus(Duration.ofDays(12)));
            Instant last = Instant.MIN;
            boolean impossible = false;
            for (DueItem item : list.items()) {
                boolean now = item.state() == DueState.IMPOSSIBLE_NOW;
                assertFalse(impossible && !now, "seed " + seed);
                last = now && !impossible ? Instant.MIN : last;
                Instant closes =
                        item.span().closes() == null ? Instant.MAX : item.span().closes();
                assertFalse(closes.isBefore(last), "seed " + seed);
                last = closes;
                impossible = now;
            }
            int byPen = list.byPen().values().stream().mapToInt(List::size).sum();
            assertEquals(list.items().size(), byPen, "seed " + seed);
        }
    }
}
