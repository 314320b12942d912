package wisp.interchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import wisp.event.Birth;
import wisp.event.Event;
import wisp.event.EventType;
import wisp.event.IllnessFound;
import wisp.log.MemoryLog;
import wisp.log.StoredEvent;

/** The cattle data set {@code cbpp} (Lesnoff et al. 2004, in R's lme4) through its mapping file; see cbpp/README.md. */
class RealRecordsTest {
    private static final Path FOLDER = Path.of("src/test/resources/cbpp");

    private final MemoryLog log = new MemoryLog(Imports.CLOCK);

    private List<Event> imported() {
        ImportReport report =
                Imports.run(log, Imports.mapped(FOLDER.resolve("cbpp-mapping.yaml")), FOLDER.resolve("cbpp.csv"));
        assertEquals(List.of(), Imports.sentences(report));
        assertEquals(56, report.read());
        return log.read(0, 10_000).stream().map(StoredEvent::event).toList();
    }

    @Test
    void everyAnimalOfAHerdAndPeriodIsOneLife() {
        List<Event> events = imported();
        Map<EventType, Long> byType =
                events.stream().collect(Collectors.groupingBy(Event::type, TreeMap::new, Collectors.counting()));
        // R 4.2.2, lme4: sum(cbpp$size) 842, sum(cbpp$incidence) 99
        assertEquals(Map.of(EventType.BIRTH, 842L, EventType.ILLNESS_FOUND, 99L, EventType.LEFT, 842L), byType);
        assertEquals(842, events.stream().map(Event::subject).distinct().count());
        assertTrue(events.stream().allMatch(Event::timeKnown));
        assertTrue(events.stream()
                .filter(e -> e.data() instanceof IllnessFound)
                .allMatch(e -> ((IllnessFound) e.data()).condition().equals("pneumonia")));
    }

    @Test
    void theAnimalsAndCasesOfEachHerdArePublishedOnes() {
        List<Event> events = imported();
        Map<String, String> penOf = events.stream()
                .filter(e -> e.data() instanceof Birth)
                .collect(Collectors.toMap(Event::subject, e -> ((Birth) e.data()).pen()));
        Map<String, Long> animals =
                penOf.values().stream().collect(Collectors.groupingBy(pen -> pen, Collectors.counting()));
        Map<String, Long> cases = events.stream()
                .filter(e -> e.data() instanceof IllnessFound)
                .collect(Collectors.groupingBy(e -> penOf.get(e.subject()), Collectors.counting()));
        // R 4.2.2, lme4: aggregate(cbind(size, incidence) ~ herd, cbpp, sum)
        long[] size = {40, 61, 74, 35, 71, 72, 40, 34, 29, 84, 96, 29, 87, 26, 64};
        long[] incidence = {9, 5, 12, 4, 6, 4, 12, 12, 2, 4, 9, 3, 3, 11, 3};
        for (int herd = 1; herd <= 15; herd++) {
            assertEquals(size[herd - 1], animals.get("herd " + herd), "herd " + herd);
            assertEquals(incidence[herd - 1], cases.getOrDefault("herd " + herd, 0L), "herd " + herd);
        }
    }

    @Test
    void anAnimalEntersFallsIllAndLeavesWithItsPeriod() {
        assertEquals(List.of("birth 2020-09-27T00:00Z", "left 2020-12-26T00:00Z"), life("herd-15-period-4-animal-1"));
        assertEquals(
                List.of("birth 2020-03-31T00:00Z", "illness-found 2020-04-10T00:00Z", "left 2020-06-29T00:00Z"),
                life("herd-1-period-2-animal-3"));
        assertEquals(List.of("birth 2020-03-31T00:00Z", "left 2020-06-29T00:00Z"), life("herd-1-period-2-animal-4"));
    }

    private List<String> life(String subject) {
        return imported().stream()
                .filter(e -> e.subject().equals(subject))
                .map(e -> e.type().wireName() + " " + e.time())
                .toList();
    }

    @Test
    void importingItAgainChangesNothing() {
        imported();
        long last = log.last();
        imported();
        assertEquals(last, log.last());
    }
}
