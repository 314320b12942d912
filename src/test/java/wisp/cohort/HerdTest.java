package wisp.cohort;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import wisp.event.EventType;
import wisp.history.Life;
import wisp.history.LifeEvent;
import wisp.history.Mark;
import wisp.log.StoredEvent;
import wisp.testing.Calf;
import wisp.testing.Events;

class HerdTest {
    private final Events events = Events.london();
    private final Herd herd = Herd.following();

    private Cohort now() {
        herd.apply(events.all());
        return herd.cohort();
    }

    private Life life(String key) {
        return now().lives().get(herd.cohort().rowOf(key));
    }

    private Calf calf(String key) {
        return new Calf(events, key).born("2026-03-01 07:30", "alive: true, pen: P1");
    }

    @Test
    void anEmptyHerdHasNoRowsAndNoSeason() {
        Cohort cohort = herd.cohort();
        assertEquals(0, cohort.table().rowCount());
        assertEquals(List.of(), cohort.seasonsWithCalves());
        assertEquals("all", cohort.newestSeason());
        assertEquals(-1, cohort.rowOf("A"));
        assertEquals(0, cohort.sequence());
        assertEquals(Instant.EPOCH, cohort.cut());
    }

    @Test
    void everyAnimalHasARowInOrderOfFirstMention() {
        calf("B");
        calf("A");
        new Calf(events, "C").at("2026-03-02 09:00", "weighed", "weight_kg: 40");
        Cohort cohort = now();
        assertEquals(List.of("B", "A", "C"), cohort.table().stringColumn("calf").asList());
        assertEquals(
                List.of("B", "A", "C"), cohort.lives().stream().map(Life::key).toList());
        assertEquals(1, cohort.rowOf("A"));
    }

    @Test
    void pensFarmAndStrayCorrectionsAreNoAnimals() {
        events.add("farm-described", "farm", "2026-01-01 00:00", "name: Low Farm");
        events.add("pen-bedded", "P1", "2026-02-01 09:00", "material: straw");
        events.add("noted", "P2", "2026-02-01 09:00", "text: wet");
        events.add("retracted", "P2", "2026-02-02 09:00", "event_source: test, event_id: e99");
        Cohort cohort = now();
        assertEquals(0, cohort.table().rowCount());
        assertEquals(Set.of("P1", "P2"), cohort.pens().keySet());
        assertEquals(
                List.of(Mark.Kind.CORRECTION_WITHOUT_TARGET),
                cohort.strayMarks().stream().map(Mark::kind).toList());
    }

    @Test
    void aPenMayBearAnAnimalsKey() {
        calf("7");
        events.add("pen-bedded", "7", "2026-02-01 09:00", "material: straw");
        events.add("noted", "7", "2026-03-02 09:00", "text: lively");
        Cohort cohort = now();
        assertEquals(
                List.of(EventType.PEN_BEDDED),
                cohort.pens().get("7").stream().map(LifeEvent::type).toList());
        assertEquals(2, life("7").events().size());
        assertEquals(List.of(), life("7").marks());
    }

    @Test
    void aSnapshotNeverChanges() {
        Calf calf = calf("A");
        Cohort before = now();
        assertSame(before, herd.cohort(), "without news it is the same");
        calf.at("2026-03-02 09:00", "died", "");
        calf("B");
        Cohort after = now();
        assertNotSame(before, after);
        assertEquals(1, before.table().rowCount());
        assertTrue(before.table().stringColumn("exit").isMissing(0));
        assertEquals("died", after.table().stringColumn("exit").get(0));
        assertEquals(2, after.table().rowCount());
    }

    @Test
    void whatACallerDoesToItsTableLeavesTheHerdAlone() {
        calf("A");
        now().table().stringColumn("pen").set(0, "mine");
        now().table().intColumn("events").set(0, 99);
        calf("B");
        assertEquals("P1", now().table().stringColumn("pen").get(0));
        assertEquals(1, now().table().intColumn("events").getInt(0));
    }

    @Test
    void aCorrectedTagFreesTheOtherAnimalsRow() {
        Calf a = calf("A");
        Calf b = calf("B");
        StoredEvent wrong = a.at("2026-03-02 09:00", "tag-fitted", "number: UK1");
        b.at("2026-03-03 09:00", "tag-fitted", "number: UK1");
        assertEquals(1, now().table().intColumn("marks").getInt(1));
        assertEquals(Mark.Kind.TAG_IN_USE, life("B").marks().get(0).kind());
        events.amend(wrong, "2026-03-04 09:00", "2026-03-02 09:00", "number: UK2");
        assertEquals(0, now().table().intColumn("marks").getInt(1));
        assertEquals(2, now().table().intColumn("events").getInt(1));
    }

    @Test
    void anEventRefoldsOnlyTheLivesThatItTouches() {
        Calf a = calf("A");
        calf("B");
        Cohort before = now();
        a.at("2026-03-02 09:00", "tag-fitted", "number: UK1");
        events.add("noted", "farm", "2026-03-02 09:00", "text: new gate");
        Cohort after = now();
        assertNotSame(before.lives().get(0), after.lives().get(0));
        assertSame(before.lives().get(1), after.lives().get(1));
    }

    @Test
    void aNewDescriptionOfTheFarmRefoldsEveryLife() {
        calf("A");
        assertEquals("2026", now().table().stringColumn("season").get(0));
        events.add(
                "farm-described",
                "farm",
                "2026-06-01 09:00",
                "zone: Pacific/Auckland, seasons: [{name: Spring, from: 2026-03-01, to: 2026-05-01}]");
        assertEquals("Spring", now().table().stringColumn("season").get(0));
        assertEquals("2026-03-01", life("A").birthDate().toString());
    }

    @Test
    void theCutIsTheTimeOfTheNewestEventWhateverOrderTheyCameIn() {
        calf("A").at("2026-03-09 09:00", "weighed", "weight_kg: 40");
        events.add("pen-bedded", "P1", "2026-03-12 09:00", "");
        calf("B");
        assertEquals(events.instant("2026-03-12 09:00"), now().cut());
    }

    @Test
    void asOfATimeLaterRecordsAndCorrectionsAreNotKnown() {
        Calf a = calf("A");
        events.recordedAt("2026-03-10 12:00");
        StoredEvent late = a.at("2026-03-02 09:00", "weighed", "weight_kg: 40");
        events.recordedAt("2026-03-11 12:00");
        events.retract(late, "2026-03-11 12:00");
        for (String[] known :
                new String[][] {{"2026-03-10 11:59:59.999", "1"}, {"2026-03-10 12:00", "2"}, {"2026-03-11 12:00", "1"}
                }) {
            Herd then = Herd.asOf(events.instant(known[0]));
            then.apply(events.all());
            assertEquals(
                    Integer.parseInt(known[1]),
                    then.cohort().table().intColumn("events").getInt(0),
                    known[0]);
            assertEquals(events.instant(known[0]), then.cohort().cut());
        }
    }

    @Test
    void asOfATimeWhatHappensLaterIsNotKnownThoughAPhonesClockRecordedItBefore() {
        events.recordedAt("2026-03-02 08:59");
        calf("A").at("2026-03-02 09:00", "weighed", "weight_kg: 40");
        Herd before = Herd.asOf(events.instant("2026-03-02 08:59:30"));
        before.apply(events.all());
        assertEquals(1, before.cohort().table().intColumn("events").getInt(0));
        Herd then = Herd.asOf(events.instant("2026-03-02 09:00"));
        then.apply(events.all());
        assertEquals(2, then.cohort().table().intColumn("events").getInt(0));
    }

    @Test
    void asOfATimeTheSequenceIsThatOfTheNewestKnownEvent() {
        calf("A");
        calf("B");
        events.recordedAt("2026-04-01 12:00");
        calf("C");
        Herd then = Herd.asOf(events.instant("2026-03-15 12:00"));
        then.apply(events.all());
        assertEquals(2, then.cohort().sequence());
        then.apply(events.all());
        assertEquals(2, then.cohort().lives().size());
    }

    @Test
    void seasonsStandInOrderOfTheirFirstBirthAndTheNewestIsKnown() {
        new Calf(events, "A").born("2026-03-01 07:30", "alive: true");
        new Calf(events, "B").born("2024-03-01 07:30", "alive: true");
        new Calf(events, "C").born("2025-03-01 07:30", "alive: true");
        new Calf(events, "D").at("2027-03-01 07:30", "died", "");
        assertEquals(List.of("2024", "2025", "2026"), now().seasonsWithCalves());
        assertEquals("2026", now().newestSeason());
    }
}
