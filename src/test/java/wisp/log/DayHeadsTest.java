package wisp.log;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.Test;

class DayHeadsTest {
    private static final ZoneId BERLIN = ZoneId.of("Europe/Berlin");

    private static List<StoredEvent> chain() {
        MemoryLog log = new MemoryLog(Notes.CLOCK);
        log.append(
                List.of(
                        Notes.recorded("a", "first", "2026-03-01T08:00:00Z"),
                        Notes.recorded("b", "22:30 in Berlin", "2026-03-01T21:30:00Z"),
                        Notes.recorded("c", "00:30 the next day in Berlin", "2026-03-01T23:30:00Z"),
                        Notes.recorded("d", "from an old book", "2026-01-05T10:00:00Z"),
                        Notes.recorded("e", "two days later", "2026-03-04T12:00:00+01:00")),
                true);
        return log.read(0, 10);
    }

    private static String written(DayHeads heads) {
        return heads.days().stream()
                .map(day -> day.day() + " " + day.head().sequence())
                .toList()
                .toString();
    }

    @Test
    void aDayEndsAtMidnightOnTheFarm() {
        assertEquals(
                "[2026-03-01 2, 2026-03-02 4, 2026-03-04 5]",
                written(DayHeads.none(BERLIN).with(chain())));
        assertEquals(
                "[2026-03-01 4, 2026-03-04 5]",
                written(DayHeads.none(ZoneId.of("UTC")).with(chain())));
    }

    @Test
    void anEventFromAnOldBookCountsToTheDayBeforeItInTheChain() {
        DayHeads heads = DayHeads.none(BERLIN).with(chain());
        assertEquals(
                new DayHead(
                        LocalDate.parse("2026-03-02"),
                        new ChainHead(4, chain().get(3).hash())),
                heads.days().get(1));
    }

    @Test
    void eventByEventGivesTheSameAsAllAtOnce() {
        DayHeads heads = DayHeads.none(BERLIN);
        for (StoredEvent stored : chain()) {
            heads = heads.with(List.of(stored));
        }
        assertEquals(DayHeads.none(BERLIN).with(chain()), heads);
        assertEquals(new ChainHead(5, chain().get(4).hash()), heads.head());
    }

    @Test
    void withoutEventsThereIsNoDay() {
        assertEquals(List.of(), DayHeads.none(BERLIN).with(List.of()).days());
        assertEquals(ChainHead.OF_NOTHING, DayHeads.none(BERLIN).head());
    }
}
