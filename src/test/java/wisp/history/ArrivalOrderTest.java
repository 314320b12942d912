package wisp.history;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wisp.log.StoredEvent;
import wisp.testing.RandomLog;

class ArrivalOrderTest {

    private static Life fold(String key, List<StoredEvent> events, List<StoredEvent> farm) {
        return LifeFold.fold(key, events, FarmHistory.of(farm), Set.of());
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void aLifeDoesNotHangOnTheOrderOfTheList(long seed) {
        System.out.println("ArrivalOrderTest, order of the list: seed " + seed);
        Random random = new Random(seed);
        for (int round = 0; round < 10; round++) {
            var subjects = RandomLog.bySubject(RandomLog.of(random.nextLong(), 120));
            List<StoredEvent> farm = subjects.getOrDefault("farm", List.of());
            for (String key : List.of("C1", "C2", "C3")) {
                List<StoredEvent> shuffled = new ArrayList<>(subjects.getOrDefault(key, List.of()));
                List<StoredEvent> farmShuffled = new ArrayList<>(farm);
                Collections.shuffle(shuffled, random);
                Collections.shuffle(farmShuffled, random);
                Life life = fold(key, subjects.getOrDefault(key, List.of()), farm);
                assertEquals(life, fold(key, shuffled, farmShuffled));
                assertEquals(PenFold.fold(farm), PenFold.fold(farmShuffled));
            }
        }
    }

    /** The same life whatever sequence its events got. */
    private record Told(
            LifeEvent born,
            List<LifeEvent> events,
            List<List<Object>> episodes,
            List<Object> exit,
            Set<List<Object>> marks,
            Set<List<Object>> withdrawn) {

        static Told of(Life life) {
            List<Object> exit = life.exit() == null
                    ? List.of()
                    : List.of(
                            life.exit().time(),
                            life.exit().kind(),
                            plain(life.exit().event()));
            return new Told(
                    life.born() == null ? null : plain(life.born()),
                    life.events().stream().map(Told::plain).toList(),
                    life.episodes().stream()
                            .map(one ->
                                    List.<Object>of(one.condition(), one.opened(), one.closed(), plain(one.event())))
                            .toList(),
                    exit,
                    Set.copyOf(life.marks().stream()
                            .map(mark -> List.<Object>of(plain(mark.event()), mark.kind(), mark.detail()))
                            .toList()),
                    Set.copyOf(life.withdrawn().stream()
                            .map(one -> List.<Object>of(plain(one.event())))
                            .toList()));
        }

        private static LifeEvent plain(LifeEvent event) {
            return new LifeEvent(
                    0,
                    event.source(),
                    event.id(),
                    event.time(),
                    event.timeKnown(),
                    event.recorded(),
                    event.recordedBy(),
                    event.amended(),
                    event.data());
        }
    }

    private static List<StoredEvent> arriving(List<StoredEvent> events, Random random) {
        List<StoredEvent> shuffled = new ArrayList<>(events);
        Collections.shuffle(shuffled, random);
        List<StoredEvent> renumbered = new ArrayList<>();
        for (StoredEvent stored : shuffled) {
            renumbered.add(new StoredEvent(renumbered.size() + 1L, "", stored.event()));
        }
        return renumbered;
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {11, 12, 13, 14, 15, 16, 17, 18})
    void ofDistinctTimesALifeIsTheSameInWhateverOrderItsEventsArrive(long seed) {
        System.out.println("ArrivalOrderTest, order of arrival: seed " + seed);
        Random random = new Random(seed);
        for (int round = 0; round < 10; round++) {
            List<StoredEvent> log = RandomLog.withDistinctTimes(random.nextLong(), 120);
            List<StoredEvent> again = arriving(log, random);
            var first = RandomLog.bySubject(log);
            var second = RandomLog.bySubject(again);
            for (String key : first.keySet()) {
                List<StoredEvent> farm = first.getOrDefault("farm", List.of());
                List<StoredEvent> farmAgain = second.getOrDefault("farm", List.of());
                Life life = fold(key, first.get(key), farm);
                assertEquals(Told.of(life), Told.of(fold(key, second.get(key), farmAgain)), key);
            }
        }
    }

    @Test
    void aLifeIsToldInOrderOfTimeAndSequenceAndHoldsNoEventTwice() {
        Random random = new Random(21);
        for (int round = 0; round < 50; round++) {
            var subjects = RandomLog.bySubject(RandomLog.of(random.nextLong(), 120));
            for (String key : subjects.keySet()) {
                Life life = fold(key, subjects.get(key), subjects.getOrDefault("farm", List.of()));
                assertEquals(life.events().stream().sorted(LifeEvent.ORDER).toList(), life.events());
                List<Long> sequences = new ArrayList<>();
                life.events().forEach(event -> sequences.add(event.sequence()));
                life.marks().forEach(mark -> sequences.add(mark.event().sequence()));
                assertEquals(Set.copyOf(sequences).size(), sequences.size(), "an event counts, or is marked once");
                List<Episode> byOpening = life.episodes().stream()
                        .sorted(Comparator.comparing(Episode::opened))
                        .toList();
                assertEquals(byOpening, life.episodes());
                life.episodes()
                        .forEach(one -> assertEquals(one.opened(), one.event().time()));
            }
        }
    }
}
