package wisp.medicine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wisp.cohort.Cohort;
import wisp.cohort.Herd;
import wisp.indicator.Definitions;
import wisp.testing.Calf;
import wisp.testing.Events;

class MedicineBookTest {
    private static final String WHOLE =
            "medicine: Oralyte, dose: 2, dose_unit: l, route: oral, batch: B7, condition: diarrhoea,"
                    + " meat_withdrawal_days: 3, given_by: Ann";
    private final Events log = Events.london();
    private final Calf calf = new Calf(log, "C1");

    @BeforeEach
    void born() {
        calf.born("2026-03-01 06:00", "alive: true, sex: male");
    }

    @Test
    void anEntryHoldsWhatTheLawAsksFor() {
        calf.at("2026-03-01 08:00", "tag-fitted", "number: UK 123450 600001");
        calf.at("2026-03-04 09:00", "treated", WHOLE);
        MedicineEntry entry = only();
        assertEquals(LocalDate.parse("2026-03-04"), entry.day());
        assertEquals("C1", entry.life().key());
        assertEquals(List.of("UK 123450 600001"), entry.tags());
        assertEquals("Oralyte", entry.medicine());
        assertEquals(2.0, entry.dose());
        assertEquals("l", entry.doseUnit());
        assertEquals("oral", entry.route());
        assertEquals("B7", entry.batch());
        assertEquals("diarrhoea", entry.reason());
        assertEquals(3, entry.withdrawalDays());
        assertEquals(LocalDate.parse("2026-03-07"), entry.lastDay());
        assertEquals("Ann", entry.givenBy());
        assertEquals(Set.of(), entry.missing());
    }

    @Test
    void whatIsNotRecordedIsNamed() {
        calf.at("2026-03-04 09:00", "treated", "medicine: Oralyte, dose: 2");
        assertEquals(Set.of(Particular.values()), only().missing());
        assertEquals(1, book("2026-03-01", "2026-03-31").incomplete().size());
    }

    @Test
    void aWithdrawalOfNoDaysIsRecorded() {
        calf.at("2026-03-04 09:00", "treated", "medicine: Oralyte, meat_withdrawal_days: 0");
        assertFalse(only().missing().contains(Particular.WITHDRAWAL));
    }

    @Test
    void theLimitsFileOfTheFarmsPlaceSaysWhatTheLawAsksFor() {
        calf.at("2026-03-04 09:00", "treated", "medicine: Oralyte");
        assertEquals(Set.of(Particular.QUANTITY, Particular.BATCH, Particular.WITHDRAWAL), only().missingByLaw());
        assertEquals("England", only().law().place());
        assertEquals(5, only().law().years());
        assertEquals(List.of("supplier"), only().law().elsewhere());
    }

    @Test
    void aFarmThatMovedKeepsEachRecordUnderTheLawOfItsDay() {
        log.add("farm-described", "farm", "2026-01-01 00:00", "jurisdiction: ireland, zone: Europe/Dublin");
        log.add("farm-described", "farm", "2026-03-10 00:00", "jurisdiction: new-zealand, zone: Pacific/Auckland");
        calf.at("2026-03-04 09:00", "treated", "medicine: Oralyte");
        calf.at("2026-03-20 09:00", "treated", "medicine: Oralyte");
        MedicineBook book = book("2026-03-01", "2026-03-31");
        // the Irish file names no batch; that of New Zealand says nothing of records
        assertEquals(
                Set.of(Particular.QUANTITY, Particular.WITHDRAWAL),
                book.entries().get(0).missingByLaw());
        assertEquals(Set.of(), book.entries().get(1).missingByLaw());
        assertEquals(2, book.incomplete().size());
        assertEquals(1, book.incompleteByLaw().size());
        assertEquals(
                List.of("Ireland"), book.laws().stream().map(RecordLaw::place).toList());
    }

    @Test
    void whatTheBookHasNoPlaceForIsNamed() {
        log.add("farm-described", "farm", "2026-01-01 00:00", "jurisdiction: ireland, zone: Europe/Dublin");
        assertEquals(
                List.of("supplier", "prescribing vet", "duration of treatment", "proof of acquisition"),
                book("2026-03-01", "2026-03-31").laws().get(0).elsewhere());
    }

    @Test
    void whoLeavesAfterATreatmentWithNoDaysDoesNotLeaveUnderWithdrawal() {
        calf.at("2026-03-04 09:00", "treated", WHOLE.replace("meat_withdrawal_days: 3", "meat_withdrawal_days: 0"));
        calf.at("2026-03-04 15:00", "left", "reason: sold");
        assertEquals(List.of(), book("2026-03-01", "2026-03-31").left());
    }

    @Test
    void vaccinesAndReliefStandInTheBook() {
        calf.at("2026-03-03 09:00", "castrated", "method: ring, anaesthetic: false, pain_relief: Paineze");
        calf.at("2026-03-05 09:00", "disbudded", "method: hot iron, anaesthetic: true, pain_relief: false");
        calf.at("2026-03-06 09:00", "vaccinated", "vaccine: Lungvax, batch: V1");
        List<MedicineEntry> entries = book("2026-03-01", "2026-03-31").entries();
        assertEquals(
                List.of(MedicineEntry.Kind.PAIN_RELIEF, MedicineEntry.Kind.ANAESTHETIC, MedicineEntry.Kind.VACCINE),
                entries.stream().map(MedicineEntry::kind).toList());
        assertEquals(
                List.of("Paineze", "", "Lungvax"),
                entries.stream().map(MedicineEntry::medicine).toList());
        assertEquals(
                List.of("castration", "disbudding", "vaccination"),
                entries.stream().map(MedicineEntry::reason).toList());
    }

    @Test
    void bothEndsOfTheSpanAreInTheBookByLocalDays() {
        calf.at("2026-03-28T23:59:00Z", "treated", WHOLE);
        calf.at("2026-03-29T00:00:00Z", "treated", WHOLE);
        calf.at("2026-03-30T22:59:00Z", "treated", WHOLE); // 23:59 on the 30th: the clocks went forward on the 29th
        calf.at("2026-03-30T23:00:00Z", "treated", WHOLE);
        assertEquals(2, book("2026-03-29", "2026-03-30").entries().size());
    }

    @Test
    void aRetractedTreatmentIsNotInTheBookAndAnAmendedOneStandsAsAmended() {
        var wrong = calf.at("2026-03-04 09:00", "treated", WHOLE);
        var mended = calf.at("2026-03-05 09:00", "treated", WHOLE);
        log.retract(wrong, "2026-03-06 09:00");
        log.amend(mended, "2026-03-06 09:00", "2026-03-05 10:00", WHOLE.replace("B7", "B8"));
        MedicineEntry entry = only();
        assertEquals("B8", entry.batch());
        assertTrue(entry.event().amended());
    }

    @Test
    void aTreatmentThatIsMarkedStaysInTheBookAndSaysSo() {
        calf.at("2026-03-10 09:00", "died", "");
        calf.at("2026-03-11 09:00", "treated", WHOLE);
        assertFalse(only().counts());
    }

    @Test
    void anAnimalWithoutABirthIsInTheBookToo() {
        log.add("treated", "bought-in", "2026-03-04 09:00", WHOLE);
        assertEquals("bought-in", only().life().key());
    }

    @Test
    void leavingUnderWithdrawalIsMarkedToTheVeryDay() {
        calf.at("2026-03-04 09:00", "treated", WHOLE); // to the end of 7 March
        calf.at("2026-03-07 23:59", "left", "reason: sold");
        Calf later = new Calf(log, "C2").born("2026-03-01 06:00", "alive: true");
        later.at("2026-03-04 09:00", "treated", WHOLE);
        later.at("2026-03-08 00:00", "left", "reason: sold");
        List<LeftUnderWithdrawal> left = book("2026-03-01", "2026-03-31").left();
        assertEquals(List.of("C1"), left.stream().map(one -> one.life().key()).toList());
        assertEquals(LocalDate.parse("2026-03-07"), left.get(0).day());
    }

    @Test
    void ofSeveralWithdrawalsTheLastToEndIsNamed() {
        calf.at("2026-03-04 09:00", "treated", "medicine: Longer, meat_withdrawal_days: 28");
        calf.at("2026-03-05 09:00", "treated", WHOLE);
        calf.at("2026-03-06 09:00", "left", "reason: transferred");
        assertEquals(
                "Longer", book("2026-03-01", "2026-03-31").left().get(0).last().medicine());
    }

    @Test
    void aDeadAnimalDidNotLeave() {
        calf.at("2026-03-04 09:00", "treated", WHOLE);
        calf.at("2026-03-05 09:00", "died", "");
        assertEquals(List.of(), book("2026-03-01", "2026-03-31").left());
    }

    @Test
    void aSpanThatEndsBeforeItBeginsIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> book("2026-03-02", "2026-03-01"));
    }

    private MedicineEntry only() {
        List<MedicineEntry> entries = book("2026-03-01", "2026-03-31").entries();
        assertEquals(1, entries.size());
        return entries.get(0);
    }

    private MedicineBook book(String from, String to) {
        return MedicineBook.of(cohort(), Definitions.load(null), LocalDate.parse(from), LocalDate.parse(to));
    }

    private Cohort cohort() {
        Herd herd = Herd.following();
        herd.apply(log.all());
        return herd.cohort();
    }
}
