package wisp.history;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import wisp.event.EventType;
import wisp.log.StoredEvent;
import wisp.testing.Calf;
import wisp.testing.Events;

class LifeFoldTest {
    private final Calf calf = Calf.bornAt("2026-03-01 07:30");

    private static List<Mark.Kind> marks(Calf calf) {
        return calf.life().marks().stream().map(Mark::kind).toList();
    }

    private static List<EventType> counting(Calf calf) {
        return calf.life().events().stream().map(LifeEvent::type).toList();
    }

    @Test
    void eventsStandInOrderOfTimeAndThoseOfOneTimeInOrderOfSequence() {
        calf.at("2026-03-03 09:00", "weaned", "");
        calf.at("2026-03-02 09:00", "moved", "pen: P2");
        calf.at("2026-03-02 09:00", "weighed", "weight_kg: 40");
        assertEquals(List.of(EventType.BIRTH, EventType.MOVED, EventType.WEIGHED, EventType.WEANED), counting(calf));
    }

    @Test
    void anEventAtTheVeryTimeOfBirthCountsAndOneAMillisecondBeforeIsMarked() {
        calf.aged(Duration.ZERO, "navel-treated", "");
        calf.aged(Duration.ofMillis(-1), "colostrum-fed", "");
        assertEquals(List.of(EventType.BIRTH, EventType.NAVEL_TREATED), counting(calf));
        assertEquals(List.of(Mark.Kind.BEFORE_BIRTH), marks(calf));
    }

    @Test
    void anEventAtTheVeryTimeOfExitCountsAndOneAMillisecondAfterIsMarked() {
        calf.at("2026-03-05 10:00", "died", "");
        calf.at("2026-03-05 10:00", "treated", "medicine: fluids");
        calf.at("2026-03-05 10:00:00.001", "treated", "medicine: fluids");
        assertEquals(List.of(EventType.BIRTH, EventType.DIED, EventType.TREATED), counting(calf));
        assertEquals(List.of(Mark.Kind.AFTER_EXIT), marks(calf));
    }

    @Test
    void theEarlierOfTwoBirthsCounts() {
        calf.born("2026-02-27 07:30", "alive: true, sex: male");
        Life life = calf.life();
        assertEquals("2026-02-27", life.birthDate().toString());
        assertEquals(List.of(Mark.Kind.SECOND_BIRTH), marks(calf));
        assertEquals(1, life.marks().get(0).event().sequence());
    }

    @Test
    void theEarlierOfTwoDeathsCounts() {
        StoredEvent later = calf.at("2026-03-09 10:00", "died", "cause: later");
        calf.at("2026-03-05 10:00", "died", "cause: earlier");
        assertEquals(
                calf.events().instant("2026-03-05 10:00"), calf.life().exit().time());
        assertEquals(List.of(Mark.Kind.SECOND_DEATH), marks(calf));
        assertEquals(later.sequence(), calf.life().marks().get(0).event().sequence());
    }

    @Test
    void aDeathAfterLeavingIsMarkedAndTheAnimalHasLeft() {
        calf.at("2026-03-05 10:00", "left", "reason: sold");
        calf.at("2026-03-09 10:00", "died", "");
        assertEquals(Exit.Kind.LEFT, calf.life().exit().kind());
        assertFalse(calf.life().exit().death());
        assertEquals(List.of(Mark.Kind.AFTER_EXIT), marks(calf));
    }

    @Test
    void leavingAfterDeathIsMarkedAndSoIsASecondLeaving() {
        calf.at("2026-03-05 10:00", "died", "");
        calf.at("2026-03-09 10:00", "left", "");
        assertEquals(List.of(Mark.Kind.AFTER_EXIT), marks(calf));
        Calf sold = Calf.bornAt("2026-03-01 07:30");
        sold.at("2026-03-05 10:00", "left", "");
        sold.at("2026-03-05 10:00", "left", "");
        assertEquals(List.of(Mark.Kind.AFTER_EXIT), marks(sold));
    }

    @Test
    void aDeathBeforeBirthIsNoExit() {
        calf.at("2026-02-05 10:00", "died", "");
        assertNull(calf.life().exit());
        assertEquals(List.of(Mark.Kind.BEFORE_BIRTH), marks(calf));
    }

    @Test
    void anEventKnownOnlyByDateOnTheDayOfBirthIsNotBeforeIt() {
        calf.at("2026-03-01", "tag-fitted", "number: UK1");
        calf.at("2026-02-28", "weighed", "weight_kg: 40");
        LifeEvent tag = calf.life().events().get(1);
        assertEquals(calf.life().born().time(), tag.time());
        assertFalse(tag.timeKnown());
        assertEquals(List.of(Mark.Kind.BEFORE_BIRTH), marks(calf));
    }

    @Test
    void anEventKnownOnlyByDateOnTheDayOfDeathCountsAndOnTheNextDayIsMarked() {
        calf.at("2026-03-05 10:00", "died", "");
        calf.at("2026-03-05", "treated", "medicine: fluids");
        calf.at("2026-03-06", "treated", "medicine: fluids");
        assertEquals(List.of(EventType.BIRTH, EventType.TREATED, EventType.DIED), counting(calf));
        assertEquals(List.of(Mark.Kind.AFTER_EXIT), marks(calf));
    }

    @Test
    void aDeathKnownOnlyByDateLiesNoEarlierThanTheLastEventOfThatDay() {
        calf.at("2026-03-05", "died", "");
        calf.at("2026-03-05 16:00", "treated", "medicine: fluids");
        calf.at("2026-03-05 18:00", "registered", "");
        calf.at("2026-03-06 08:00", "weighed", "weight_kg: 40");
        Exit exit = calf.life().exit();
        assertEquals(calf.events().instant("2026-03-05 16:00"), exit.time());
        assertFalse(exit.timeKnown());
        assertEquals(exit.time(), exit.event().time());
        assertEquals(List.of(Mark.Kind.AFTER_EXIT), marks(calf));
    }

    @Test
    void aDeathKnownOnlyByDateIsNotMovedByAnotherAnimalsBirthUnderItsKey() {
        calf.at("2026-03-05", "died", "");
        calf.born("2026-03-05 16:00", "alive: true");
        assertEquals(
                calf.events().instant("2026-03-05 00:00"), calf.life().exit().time());
    }

    @Test
    void birthAndDeathKnownOnlyByTheSameDateIsALifeOfNoLength() {
        Calf short1 = Calf.bornAt("2026-03-01");
        short1.at("2026-03-01", "died", "");
        assertEquals(Duration.ZERO, short1.life().ageAt(short1.life().exit().time()));
        assertEquals(List.of(), marks(short1));
    }

    @Test
    void anEventKnownOnlyByDateIsHeldAtTheStartOfItsDayWhateverHourWasWritten() {
        Calf loose = new Calf("A").born("2026-06-01 14:00", "alive: true, time_known: false");
        loose.at("2026-06-01 09:00", "navel-treated", "");
        loose.at("2026-06-01 00:30", "colostrum-fed", "");
        assertEquals(
                loose.events().instant("2026-06-01 00:00"), loose.life().born().time());
        assertEquals(List.of(), marks(loose));
    }

    @Test
    void aCalfBornDeadIsOutAtBirth() {
        Calf dead = new Calf("A").born("2026-03-01 07:30", "alive: false");
        dead.at("2026-03-01 08:00", "tissue-sampled", "");
        dead.at("2026-03-01 09:00", "navel-treated", "");
        dead.at("2026-03-01 10:00", "died", "");
        dead.at("2026-03-02 10:00", "left", "");
        Exit exit = dead.life().exit();
        assertEquals(Exit.Kind.BORN_DEAD, exit.kind());
        assertTrue(exit.death());
        assertEquals(dead.life().born(), exit.event());
        assertEquals(List.of(EventType.BIRTH, EventType.TISSUE_SAMPLED), counting(dead));
        assertEquals(List.of(Mark.Kind.AFTER_EXIT, Mark.Kind.SECOND_DEATH, Mark.Kind.AFTER_EXIT), marks(dead));
    }

    @Test
    void papersAndLaboratoryWorkMayFollowExit() {
        calf.at("2026-03-05 10:00", "left", "");
        for (String type : List.of("sample-sent", "registered", "tissue-sampled")) {
            calf.at("2026-03-09 10:00", type, "");
        }
        calf.at("2026-03-12 10:00", "sample-result", "result: negative");
        calf.at("2026-03-12 10:00", "noted", "text: sold well");
        assertEquals(List.of(), marks(calf));
        assertEquals(7, calf.life().events().size());
    }

    @Test
    void onlyARecordedFemaleCannotBeCastrated() {
        for (String sex : List.of("", ", sex: male", ", sex: unknown", ", sex: female")) {
            Calf ringed = new Calf("A").born("2026-03-01 07:30", "alive: true" + sex);
            ringed.at("2026-03-04 09:00", "castrated", "method: ring");
            boolean marked = sex.contains("female");
            assertEquals(marked ? List.of(Mark.Kind.CASTRATED_FEMALE) : List.of(), marks(ringed), sex);
        }
    }

    @Test
    void withoutABirthEveryEventIsMarked() {
        Calf unknown = new Calf("A");
        unknown.at("2026-03-05 10:00", "weighed", "weight_kg: 40");
        unknown.at("2026-03-06 10:00", "died", "");
        assertEquals(List.of(Mark.Kind.NO_BIRTH, Mark.Kind.NO_BIRTH), marks(unknown));
        assertNull(unknown.life().exit());
        assertEquals(List.of(), unknown.life().events());
    }

    @Test
    void twinsAreTwoLives() {
        Events events = Events.london();
        Calf one = new Calf(events, "A1").born("2026-03-01 07:30", "alive: true, litter_size: 2, dam: D");
        Calf two = new Calf(events, "A2").born("2026-03-01 07:50", "alive: false, litter_size: 2, dam: D");
        assertNull(one.life().exit());
        assertEquals(Exit.Kind.BORN_DEAD, two.life().exit().kind());
        assertEquals(List.of(), marks(one));
        assertEquals(List.of(), marks(two));
    }

    @Test
    void aPenOfTheSameKeyLeavesTheAnimalAlone() {
        calf.at("2026-02-01 09:00", "pen-bedded", "material: straw");
        calf.at("2026-03-05 10:00", "died", "");
        calf.at("2026-03-09 09:00", "pen-cleaned", "");
        assertEquals(List.of(), marks(calf));
        assertEquals(List.of(EventType.BIRTH, EventType.DIED), counting(calf));
    }
}
