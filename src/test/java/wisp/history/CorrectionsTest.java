package wisp.history;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import wisp.event.EventType;
import wisp.event.Weighed;
import wisp.log.StoredEvent;
import wisp.testing.Calf;
import wisp.testing.Events;

class CorrectionsTest {
    private final Calf calf = Calf.bornAt("2026-03-01 07:30");

    private StoredEvent weighed(String kg) {
        return calf.at("2026-03-05 09:00", "weighed", "weight_kg: " + kg);
    }

    private StoredEvent amend(StoredEvent target, String kg) {
        return calf.events().amend(target, "2026-03-06 09:00", "2026-03-05 09:00", "weight_kg: " + kg);
    }

    private StoredEvent retract(StoredEvent target) {
        return calf.events().retract(target, "2026-03-07 09:00");
    }

    private List<Double> weights() {
        return calf.life().events().stream()
                .filter(event -> event.data() instanceof Weighed)
                .map(event -> ((Weighed) event.data()).weightKg())
                .toList();
    }

    private List<Mark.Kind> marks() {
        return calf.life().marks().stream().map(Mark::kind).toList();
    }

    @Test
    void aRetractedEventIsWithdrawnAndNamesItsRetraction() {
        StoredEvent wrong = weighed("40");
        StoredEvent retraction = retract(wrong);
        Life life = calf.life();
        assertEquals(List.of(), weights());
        assertEquals(1, life.withdrawn().size());
        assertEquals(wrong.sequence(), life.withdrawn().get(0).event().sequence());
        assertEquals(retraction.sequence(), life.withdrawn().get(0).by().sequence());
        assertEquals(List.of(), life.marks());
    }

    @Test
    void anAmendmentReplacesTimeAndDataAndKeepsTheName() {
        StoredEvent wrong = weighed("40");
        calf.events().recordedAt("2026-03-08 12:00");
        calf.events().amend(wrong, "2026-03-08 12:00", "2026-03-04 10:00", "weight_kg: 44");
        LifeEvent now = calf.life().events().get(1);
        assertEquals(wrong.sequence(), now.sequence());
        assertEquals(wrong.event().id(), now.id());
        assertEquals(calf.events().instant("2026-03-04 10:00"), now.time());
        assertEquals(calf.events().instant("2026-03-08 12:00"), now.recorded());
        assertEquals(44.0, ((Weighed) now.data()).weightKg());
        assertTrue(now.amended());
        assertEquals(
                40.0,
                ((Weighed) calf.life().withdrawn().get(0).event().data()).weightKg(),
                "the first form is kept beside it");
    }

    @Test
    void ofSeveralAmendmentsTheLastInSequenceCountsWhateverTheirTimes() {
        StoredEvent wrong = weighed("40");
        calf.events().amend(wrong, "2026-03-09 09:00", "2026-03-05 09:00", "weight_kg: 41");
        calf.events().amend(wrong, "2026-03-06 09:00", "2026-03-05 09:00", "weight_kg: 42");
        assertEquals(List.of(42.0), weights());
    }

    @Test
    void aRetractedAmendmentFallsBackToTheOneBefore() {
        StoredEvent wrong = weighed("40");
        StoredEvent first = amend(wrong, "41");
        StoredEvent second = amend(wrong, "42");
        retract(second);
        assertEquals(List.of(41.0), weights());
        retract(first);
        assertEquals(List.of(40.0), weights());
        assertFalse(calf.life().events().get(1).amended());
    }

    @Test
    void aRetractedRetractionRevives() {
        StoredEvent right = weighed("40");
        StoredEvent retraction = retract(right);
        StoredEvent revival = retract(retraction);
        assertEquals(List.of(40.0), weights());
        retract(revival);
        assertEquals(List.of(), weights());
        assertEquals(List.of(), marks());
    }

    @Test
    void anEventStaysWithdrawnWhileOneOfTwoRetractionsStands() {
        StoredEvent wrong = weighed("40");
        StoredEvent first = retract(wrong);
        retract(wrong);
        retract(first);
        assertEquals(List.of(), weights());
    }

    @Test
    void ofSeveralStandingRetractionsTheFirstInSequenceIsNamed() {
        StoredEvent wrong = weighed("40");
        StoredEvent first = retract(wrong);
        StoredEvent second = retract(wrong);
        assertEquals(first.sequence(), calf.life().withdrawn().get(0).by().sequence());
        retract(retract(first));
        assertEquals(first.sequence(), calf.life().withdrawn().get(0).by().sequence(), "revived");
        retract(first);
        assertEquals(second.sequence(), calf.life().withdrawn().get(0).by().sequence());
    }

    @Test
    void aRetractedEventStaysWithdrawnThoughItWasAmended() {
        StoredEvent wrong = weighed("40");
        retract(wrong);
        amend(wrong, "41");
        assertEquals(List.of(), weights());
    }

    @Test
    void aCorrectionMayArriveBeforeItsTarget() {
        String target = "event_source: test, event_id: e4";
        calf.at("2026-03-06 09:00", "amended", target + ", time: '2026-03-05T09:00:00Z', data: {weight_kg: 41}");
        assertEquals(List.of(Mark.Kind.CORRECTION_WITHOUT_TARGET), marks());
        calf.at("2026-03-06 10:00", "noted", "text: drinks well");
        weighed("40");
        assertEquals(List.of(41.0), weights());
        assertEquals(List.of(), marks());
    }

    @Test
    void anAmendmentThatDoesNotFitIsMarkedAndTheEventStaysAsItWas() {
        StoredEvent right = weighed("40");
        amend(right, "41");
        calf.events().amend(right, "2026-03-06 10:00", "2026-03-05 09:00", "score: 2");
        assertEquals(List.of(41.0), weights());
        assertEquals(List.of(Mark.Kind.AMENDMENT_DOES_NOT_FIT), marks());
        assertTrue(calf.life().marks().get(0).detail().contains("weight_kg"));
    }

    @Test
    void anAmendmentOfACorrectionIsMarkedAndDoesNothing() {
        StoredEvent wrong = weighed("40");
        StoredEvent retraction = retract(wrong);
        calf.events().amend(retraction, "2026-03-08 09:00", "2026-03-07 09:00", "event_source: test, event_id: e1");
        assertEquals(List.of(), weights());
        assertEquals(List.of(Mark.Kind.AMENDS_A_CORRECTION), marks());
    }

    @Test
    void aCircleOfRetractionsHasNoEffectAndEachIsMarked() {
        StoredEvent wrong = weighed("40");
        calf.at("2026-03-07 09:00", "retracted", "event_source: test, event_id: e4");
        calf.at("2026-03-07 10:00", "retracted", "event_source: test, event_id: e3");
        assertEquals(List.of(40.0), weights());
        assertEquals(List.of(Mark.Kind.CIRCULAR_CORRECTION, Mark.Kind.CIRCULAR_CORRECTION), marks());
        retract(wrong);
        assertEquals(List.of(), weights());
    }

    @Test
    void aCorrectionOfItselfIsACircle() {
        calf.at("2026-03-07 09:00", "retracted", "event_source: test, event_id: e2");
        assertEquals(List.of(Mark.Kind.CIRCULAR_CORRECTION), marks());
    }

    @Test
    void aRetractionFromOutsideBreaksACircle() {
        StoredEvent one = calf.at("2026-03-07 09:00", "retracted", "event_source: test, event_id: e3");
        calf.at("2026-03-07 10:00", "retracted", "event_source: test, event_id: e2");
        retract(one);
        assertEquals(List.of(), marks());
        assertEquals(1, calf.life().withdrawn().size());
    }

    @Test
    void aCorrectionWithoutTargetIsMarkedUntilItIsRetracted() {
        StoredEvent stray = calf.at("2026-03-07 09:00", "retracted", "event_source: test, event_id: e99");
        assertEquals(List.of(Mark.Kind.CORRECTION_WITHOUT_TARGET), marks());
        retract(stray);
        assertEquals(List.of(), marks());
    }

    @Test
    void aCorrectionUnderAnotherSubjectDoesNothingAndIsMarkedThere() {
        StoredEvent right = weighed("40");
        Calf other = new Calf(calf.events(), "B").born("2026-03-01 08:00", "alive: true");
        other.at(
                "2026-03-07 09:00",
                "retracted",
                "event_source: test, event_id: " + right.event().id());
        assertEquals(List.of(40.0), weights());
        assertEquals(
                List.of(Mark.Kind.CORRECTION_WITHOUT_TARGET),
                other.life().marks().stream().map(Mark::kind).toList());
    }

    @Test
    void sameIdOfAnotherSourceIsAnotherEvent() {
        weighed("40");
        calf.at("2026-03-07 09:00", "retracted", "event_source: elsewhere, event_id: e2");
        assertEquals(List.of(40.0), weights());
    }

    @Test
    void anAmendedBirthMovesAgeAndEverythingThatHangsOnIt() {
        StoredEvent early = calf.at("2026-02-28 23:50", "navel-treated", "");
        assertEquals(List.of(Mark.Kind.BEFORE_BIRTH), marks());
        calf.events().amend(calf.birth(), "2026-03-02 09:00", "2026-02-28 23:40", "alive: true, sex: male");
        Life life = calf.life();
        assertEquals(List.of(), life.marks());
        assertEquals("2026-02-28", life.birthDate().toString());
        assertEquals(10, life.ageAt(early.event().time().toInstant()).toMinutes());
        assertEquals(calf.birth().sequence(), life.born().sequence());
    }

    @Test
    void anAmendmentMayMakeAnEventKnownByDateOnlyAndBack() {
        StoredEvent weighing = weighed("40");
        calf.events().amend(weighing, "2026-03-06 09:00", "2026-03-05", "weight_kg: 40");
        assertFalse(calf.life().events().get(1).timeKnown());
        assertEquals(
                calf.events().instant("2026-03-05 00:00"),
                calf.life().events().get(1).time());
        amend(weighing, "40");
        assertTrue(calf.life().events().get(1).timeKnown());
    }

    @Test
    void theOnlyBirthRetractedLeavesALifeWithoutBirth() {
        weighed("40");
        retract(calf.birth());
        Life life = calf.life();
        assertNull(life.born());
        assertEquals(List.of(Mark.Kind.NO_BIRTH), marks());
        assertEquals(EventType.WEIGHED, life.marks().get(0).event().type());
    }

    @Test
    void aLongChainOfRetractionsIsResolved() {
        StoredEvent last = weighed("40");
        for (int i = 0; i < 20_001; i++) {
            last = retract(last);
        }
        assertEquals(List.of(), weights());
        retract(last);
        assertEquals(List.of(40.0), weights());
    }

    @Test
    void aPensEventsAreCorrectedToo() {
        Events events = Events.london();
        StoredEvent bedded = events.add("pen-bedded", "P1", "2026-03-01 09:00", "material: straw");
        events.add("pen-cleaned", "P1", "2026-03-02 09:00", "");
        events.retract(bedded, "2026-03-03 09:00");
        events.add("retracted", "P1", "2026-03-03 09:00", "event_source: test, event_id: e77");
        assertEquals(
                List.of(EventType.PEN_CLEANED),
                PenFold.fold(events.all()).stream().map(LifeEvent::type).toList());
        assertEquals(
                List.of(Mark.Kind.CORRECTION_WITHOUT_TARGET),
                PenFold.marks(events.all()).stream().map(Mark::kind).toList());
        assertTrue(LifeFold.fold("P1", events.all(), FarmHistory.UNDESCRIBED, Set.of())
                .events()
                .isEmpty());
    }
}
