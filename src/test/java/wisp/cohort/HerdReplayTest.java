package wisp.cohort;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wisp.event.TagFitted;
import wisp.history.FarmHistory;
import wisp.history.Life;
import wisp.history.LifeEvent;
import wisp.history.LifeFold;
import wisp.log.StoredEvent;
import wisp.testing.RandomLog;

/** A herd kept current event by event is, at every moment, the herd that a replay of the log gives. */
class HerdReplayTest {
    private static final int ROUNDS = 8;

    private static Herd replay(List<StoredEvent> events) {
        Herd herd = Herd.following();
        herd.apply(events);
        return herd;
    }

    private static List<StoredEvent> known(List<StoredEvent> events, Instant time) {
        return events.stream()
                .filter(stored -> !stored.event().recordedTime().toInstant().isAfter(time))
                .filter(stored -> !stored.event().time().toInstant().isAfter(time))
                .toList();
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void afterEveryBatchTheHerdIsThatOfAReplay(long seed) {
        System.out.println("HerdReplayTest, batches: seed " + seed);
        Random random = new Random(seed);
        for (int round = 0; round < ROUNDS; round++) {
            List<StoredEvent> log = RandomLog.of(random.nextLong(), 40 + random.nextInt(120));
            Herd herd = Herd.following();
            int most = 1 + random.nextInt(12);
            for (int from = 0, to; from < log.size(); from = to) {
                to = Math.min(log.size(), from + 1 + random.nextInt(most));
                herd.apply(log.subList(from, to));
                String when = "seed " + seed + ", round " + round + ", after event " + to;
                SameCohort.check(replay(log.subList(0, to)).cohort(), herd.cohort(), when);
            }
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {31, 32, 33, 34, 35, 36})
    void asOfATimeIsTheHerdFedWithWhatWasKnownThen(long seed) {
        System.out.println("HerdReplayTest, as of: seed " + seed);
        Random random = new Random(seed);
        for (int round = 0; round < ROUNDS; round++) {
            List<StoredEvent> log = RandomLog.of(random.nextLong(), 120);
            for (int i = 0; i < 12; i++) {
                StoredEvent some = log.get(random.nextInt(log.size()));
                Instant at = some.event().recordedTime().toInstant().minusMillis(random.nextInt(2));
                Herd herd = Herd.asOf(at);
                int split = random.nextInt(log.size());
                herd.apply(log.subList(0, split));
                herd.apply(log.subList(split, log.size()));
                String when = "seed " + seed + ", round " + round + ", as of " + at;
                SameCohort.sameButCut(replay(known(log, at)).cohort(), herd.cohort(), when);
                assertEquals(at, herd.cohort().cut(), when);
            }
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {41, 42, 43, 44})
    void theSameEventsAgainChangeNothing(long seed) {
        System.out.println("HerdReplayTest, the same again: seed " + seed);
        Random random = new Random(seed);
        List<StoredEvent> log = RandomLog.of(random.nextLong(), 150);
        Herd herd = replay(log);
        Cohort before = herd.cohort();
        herd.apply(log.subList(40, 90));
        herd.apply(log);
        herd.apply(List.of());
        SameCohort.check(before, herd.cohort(), "seed " + seed);
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {51, 52, 53, 54, 55, 56})
    void theHerdIsThatOfAPlainFoldOverEverything(long seed) {
        System.out.println("HerdReplayTest, plain fold: seed " + seed);
        Random random = new Random(seed);
        for (int round = 0; round < ROUNDS; round++) {
            List<StoredEvent> log = RandomLog.of(random.nextLong(), 150);
            Herd herd = Herd.following();
            log.forEach(stored -> herd.apply(List.of(stored)));
            Cohort cohort = herd.cohort();
            Map<String, List<StoredEvent>> subjects = RandomLog.bySubject(log);
            FarmHistory farm = FarmHistory.of(subjects.getOrDefault(FarmHistory.SUBJECT, List.of()));
            Set<Long> clashes = clashes(subjects, farm);
            CohortTable table = new CohortTable();
            int row = 0;
            for (Life life : cohort.lives()) {
                Life plain = LifeFold.fold(life.key(), subjects.get(life.key()), farm, clashes);
                assertEquals(plain, life, "seed " + seed + ", round " + round);
                table.put(row++, CohortRow.of(plain, farm));
            }
            SameCohort.sameTable(table.copy(), cohort.table(), "seed " + seed + ", round " + round);
        }
    }

    private record Fitted(String animal, String number, LifeEvent event, Instant exit) {}

    /** Every fitting in order of time: marked where another animal holds the number and is still here. */
    private static Set<Long> clashes(Map<String, List<StoredEvent>> subjects, FarmHistory farm) {
        List<Fitted> all = new ArrayList<>();
        subjects.forEach((key, events) -> {
            Life life = LifeFold.fold(key, events, farm, Set.of());
            Instant exit = life.exit() == null ? Instant.MAX : life.exit().time();
            for (LifeEvent event : life.events()) {
                if (event.data() instanceof TagFitted tag) {
                    all.add(new Fitted(key, tag.number(), event, exit));
                }
            }
        });
        all.sort(Comparator.comparing(Fitted::event, LifeEvent.ORDER));
        Map<String, Fitted> holders = new HashMap<>();
        Set<Long> marked = new HashSet<>();
        for (Fitted fitted : all) {
            Fitted holder = holders.get(fitted.number());
            boolean other = holder != null && !holder.animal().equals(fitted.animal());
            if (other && holder.exit().isAfter(fitted.event().time())) {
                marked.add(fitted.event().sequence());
            } else {
                holders.put(fitted.number(), fitted);
            }
        }
        return marked;
    }
}
