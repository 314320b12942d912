package wisp.history;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import wisp.event.EventReader;
import wisp.log.EventLog;
import wisp.log.MemoryLog;
import wisp.log.StoredEvent;

/** The rule of the last day under withdrawal, by the clocks of London, where nothing else is said of the farm. */
class MeatWithdrawalTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T10:00:00Z"), ZoneOffset.UTC);
    private final List<String> events = new ArrayList<>();

    @Test
    void theLastDayIsTheDayOfTreatmentPlusTheRecordedDays() {
        birth("2026-05-01T06:00:00+01:00");
        treated("2026-05-04T09:30:00+01:00", "10");
        MeatWithdrawal one = only();
        assertEquals(LocalDate.parse("2026-05-14"), one.lastDay());
        assertEquals(Instant.parse("2026-05-14T23:00:00Z"), one.end()); // 00:00 on 15 May in London
        assertTrue(one.runsAt(Instant.parse("2026-05-14T22:59:59Z")));
        assertFalse(one.runsAt(Instant.parse("2026-05-14T23:00:00Z")));
    }

    @Test
    void overTheNightOnWhichClocksGoForwardItStillEndsWithALocalDay() {
        birth("2026-03-01T06:00:00+00:00");
        treated("2026-03-27T12:00:00+00:00", "2"); // the clocks go forward on 29 March 2026 at 01:00
        assertEquals(Instant.parse("2026-03-29T23:00:00Z"), only().end());
    }

    @Test
    void overTheNightOnWhichClocksGoBackItStillEndsWithALocalDay() {
        birth("2026-10-01T06:00:00+01:00");
        treated("2026-10-24T12:00:00+01:00", "1"); // the clocks go back on 25 October 2026 at 02:00
        assertEquals(Instant.parse("2026-10-26T00:00:00Z"), only().end());
    }

    @Test
    void aTreatmentLateInTheEveningBelongsToItsLocalDay() {
        birth("2026-05-01T06:00:00+01:00");
        treated("2026-05-03T23:30:00Z", "1"); // half past midnight on 4 May in London
        assertEquals(LocalDate.parse("2026-05-05"), only().lastDay());
    }

    @Test
    void aPeriodOfNoDaysHoldsNothingBack() {
        birth("2026-05-01T06:00:00+01:00");
        treated("2026-05-04T09:30:00+01:00", "0");
        assertFalse(only().runsAt(Instant.parse("2026-05-04T08:30:00Z")));
        assertFalse(only().runsAt(Instant.parse("2026-05-04T20:00:00Z")));
        assertEquals(LocalDate.parse("2026-05-04"), only().lastDay());
    }

    @Test
    void withoutDaysThereIsNoEnd() {
        birth("2026-05-01T06:00:00+01:00");
        treated("2026-05-04T09:30:00+01:00", "null");
        assertNull(only().end());
        assertFalse(only().runsAt(Instant.parse("2026-05-04T09:00:00Z")));
    }

    @Test
    void noughtDaysLastToTheEndOfTheDay() {
        birth("2026-05-01T06:00:00+01:00");
        treated("2026-05-04T09:30:00+01:00", "0");
        assertEquals(LocalDate.parse("2026-05-04"), only().lastDay());
    }

    @Test
    void aMarkedTreatmentIsKeptBecauseTheMedicineMayBeInTheAnimal() {
        birth("2026-05-04T12:00:00+01:00");
        treated("2026-05-04T09:30:00+01:00", "10");
        assertFalse(only().counts());
        assertEquals(LocalDate.parse("2026-05-14"), only().lastDay());
    }

    @Test
    void aTreatmentWithoutARecordedBirthIsKeptToo() {
        treated("2026-05-04T09:30:00+01:00", "10");
        assertEquals(LocalDate.parse("2026-05-14"), only().lastDay());
    }

    @Test
    void aRetractedTreatmentHoldsNothing() {
        birth("2026-05-01T06:00:00+01:00");
        treated("2026-05-04T09:30:00+01:00", "10");
        event("retracted", "2026-05-05T09:30:00+01:00", "{\"event_source\":\"test\",\"event_id\":\"2\"}");
        assertEquals(List.of(), MeatWithdrawal.of(life()));
        assertNull(MeatWithdrawal.lastEnd(List.of()));
    }

    @Test
    void theLongestDecidesNotTheLatest() {
        birth("2026-05-01T06:00:00+01:00");
        treated("2026-05-04T09:30:00+01:00", "30");
        treated("2026-05-06T09:30:00+01:00", "1");
        assertEquals(Instant.parse("2026-06-03T23:00:00Z"), MeatWithdrawal.lastEnd(MeatWithdrawal.of(life())));
    }

    private MeatWithdrawal only() {
        List<MeatWithdrawal> all = MeatWithdrawal.of(life());
        assertEquals(1, all.size());
        return all.get(0);
    }

    private void birth(String time) {
        event("birth", time, "{\"alive\":true}");
    }

    private void treated(String time, String days) {
        event("treated", time, "{\"medicine\":\"penicillin\",\"meat_withdrawal_days\":" + days + "}");
    }

    private void event(String type, String time, String data) {
        events.add("{\"specversion\":\"1.0\",\"id\":\"" + (events.size() + 1) + "\",\"source\":\"test\",\"type\":\""
                + type + "\",\"subject\":\"c\",\"time\":\"" + time + "\",\"data\":" + data + "}");
    }

    private Life life() {
        EventLog log = new MemoryLog(CLOCK);
        EventReader reader = EventReader.offered(Set.of(), CLOCK);
        log.append(events.stream().map(text -> reader.read(text).event()).toList(), true);
        List<StoredEvent> stored = log.read(0, 100);
        return LifeFold.fold("c", stored, FarmHistory.UNDESCRIBED, Set.of());
    }
}
