package wisp.history;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.Test;
import wisp.event.FarmDescribed;
import wisp.log.StoredEvent;
import wisp.testing.Calf;
import wisp.testing.Events;

class FarmHistoryTest {
    private final Events events = Events.london();

    private StoredEvent describe(String when, String fields) {
        return events.add("farm-described", "farm", when, fields);
    }

    private FarmHistory farm() {
        return FarmHistory.of(events.all());
    }

    @Test
    void aFarmOfWhichNothingWasSaidIsTakenForGrantedAndSaysSo() {
        assertFalse(farm().latest().described());
        assertEquals(Farm.UNDESCRIBED, farm().at(events.instant("2026-01-01 00:00")));
        assertEquals("2026", farm().seasonOf(LocalDate.parse("2026-12-31")));
    }

    @Test
    void aDescriptionHoldsFromItsTimeOnAndTheEarliestAlsoBackwards() {
        describe("2026-06-01 00:00", "jurisdiction: scotland");
        describe("2025-06-01 00:00", "jurisdiction: england");
        assertEquals("england", farm().at(events.instant("2020-01-01 00:00")).jurisdiction());
        assertEquals(
                "england", farm().at(events.instant("2026-05-31 23:59:59.999")).jurisdiction());
        assertEquals("scotland", farm().at(events.instant("2026-06-01 00:00")).jurisdiction());
        assertEquals("scotland", farm().latest().jurisdiction());
    }

    @Test
    void aFieldLeftOutStaysAsItWas() {
        describe("2025-06-01 00:00", "name: Low Farm, zone: Europe/Dublin, enterprise: beef");
        describe("2026-06-01 00:00", "jurisdiction: ireland");
        Farm latest = farm().latest();
        assertEquals("Low Farm", latest.name());
        assertEquals(ZoneId.of("Europe/Dublin"), latest.zone());
        assertEquals(FarmDescribed.Enterprise.BEEF, latest.enterprise());
        assertTrue(latest.described());
    }

    @Test
    void ofTwoDescriptionsOfOneTimeTheLastInSequenceHolds() {
        describe("2025-06-01 00:00", "name: Low Farm");
        describe("2025-06-01 00:00", "name: High Farm");
        assertEquals("High Farm", farm().at(events.instant("2025-06-01 00:00")).name());
    }

    @Test
    void aRetractedDescriptionWasNeverSaid() {
        StoredEvent wrong = describe("2025-06-01 00:00", "zone: America/New_York");
        describe("2026-06-01 00:00", "name: Low Farm");
        events.retract(wrong, "2026-06-02 00:00");
        assertEquals(ZoneId.of("Europe/London"), farm().latest().zone());
    }

    @Test
    void aSeasonHoldsItsFirstDayAndNotItsLast() {
        describe("2025-06-01 00:00", "seasons: [{name: Spring 26, from: 2026-02-01, to: 2026-05-01}]");
        assertEquals("2026", farm().seasonOf(LocalDate.parse("2026-01-31")));
        assertEquals("Spring 26", farm().seasonOf(LocalDate.parse("2026-02-01")));
        assertEquals("Spring 26", farm().seasonOf(LocalDate.parse("2026-04-30")));
        assertEquals("2026", farm().seasonOf(LocalDate.parse("2026-05-01")));
    }

    @Test
    void theLastWordOnASeasonsNameCountsAndOtherSeasonsStay() {
        describe(
                "2025-06-01 00:00",
                "seasons: [{name: S25, from: 2025-02-01, to: 2025-05-01}, {name: S26, from: 2026-02-01, to: 2026-05-01}]");
        describe("2026-06-01 00:00", "seasons: [{name: S25, from: 2025-02-01, to: 2025-06-01}]");
        assertEquals("S25", farm().seasonOf(LocalDate.parse("2025-05-31")));
        assertEquals("S26", farm().seasonOf(LocalDate.parse("2026-02-01")));
        assertEquals(
                List.of("S25", "S26"),
                farm().seasons().stream().map(FarmDescribed.Season::name).toList());
    }

    @Test
    void ofTwoSeasonsThatOverlapTheOneNamedLaterHolds() {
        describe(
                "2025-06-01 00:00",
                "seasons: [{name: All, from: 2026-01-01, to: 2027-01-01}, {name: Spring, from: 2026-02-01, to: 2026-05-01}]");
        assertEquals("Spring", farm().seasonOf(LocalDate.parse("2026-03-01")));
        assertEquals("All", farm().seasonOf(LocalDate.parse("2026-06-01")));
    }

    @Test
    void aCalfKeepsTheFarmOfItsBirth() {
        Calf early = new Calf(events, "A").born("2026-05-31 12:00", "alive: true");
        Calf later = new Calf(events, "B").born("2026-06-01 00:00", "alive: true");
        describe("2025-06-01 00:00", "jurisdiction: england, zone: Europe/London");
        describe("2026-06-01 00:00", "jurisdiction: scotland, zone: America/New_York");
        assertEquals("england", early.life().farm().jurisdiction());
        assertEquals(ZoneId.of("Europe/London"), early.life().farm().zone());
        assertEquals("scotland", later.life().farm().jurisdiction());
        assertEquals("2026-05-31", later.life().birthDate().toString());
    }

    @Test
    void historiesAreEqualWhenTheySayTheSame() {
        describe("2025-06-01 00:00", "name: Low Farm");
        FarmHistory before = farm();
        events.add("noted", "farm", "2026-01-01 00:00", "text: new gate");
        assertEquals(before, farm());
        assertEquals(before.hashCode(), farm().hashCode());
        describe("2026-06-01 00:00", "name: High Farm");
        assertNotEquals(before, farm());
    }
}
