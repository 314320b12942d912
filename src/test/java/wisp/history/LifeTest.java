package wisp.history;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import wisp.testing.Calf;
import wisp.testing.Events;

class LifeTest {

    private static long day(Calf calf, String when) {
        return calf.life().dayOfLife(calf.events().instant(when));
    }

    @Test
    void theDayOfBirthIsDayZeroFromMidnightToMidnight() {
        Calf calf = Calf.bornAt("2026-03-01 23:59");
        assertEquals(0, day(calf, "2026-03-01 23:59:59.999"));
        assertEquals(1, day(calf, "2026-03-02 00:00"));
        assertEquals(20, day(calf, "2026-03-21 23:59:59"));
        assertEquals(21, day(calf, "2026-03-22 00:00"));
    }

    @Test
    void aBirthAtMidnightBelongsToTheDayThatBegins() {
        Calf calf = Calf.bornAt("2026-03-02 00:00");
        assertEquals("2026-03-02", calf.life().birthDate().toString());
        assertEquals(0, day(calf, "2026-03-02 23:59"));
    }

    @Test
    void aBirthByNightInSummerIsDatedByTheFarmsClockAndNotByGreenwich() {
        Calf calf = new Calf("A").born("2026-06-30T23:30:00Z", "alive: true");
        assertEquals("2026-07-01", calf.life().birthDate().toString());
    }

    @Test
    void aDayOfTwentyThreeHoursIsADayOfLifeAllTheSame() {
        Calf calf = Calf.bornAt("2026-03-28 12:00");
        assertEquals(1, day(calf, "2026-03-29 23:59"));
        assertEquals(2, day(calf, "2026-03-30 00:00"));
        assertEquals(calf.events().instant("2026-03-30 00:00"), calf.life().endOfDay(1));
        assertEquals(
                Duration.ofHours(23),
                Duration.between(calf.life().endOfDay(0), calf.life().endOfDay(1)));
        assertEquals(Duration.ofHours(23), calf.life().ageAt(calf.events().instant("2026-03-29 12:00")));
    }

    @Test
    void aDayOfTwentyFiveHoursIsADayOfLifeAllTheSame() {
        Calf calf = Calf.bornAt("2026-10-24 12:00");
        assertEquals(1, day(calf, "2026-10-25T01:30:00Z"));
        assertEquals(
                Duration.ofHours(25),
                Duration.between(calf.life().endOfDay(0), calf.life().endOfDay(1)));
    }

    @Test
    void whereTheClockChangesAtMidnightTheDayBeginsAtItsFirstHour() {
        // America/Santiago went from 24:00 of 6 September 2025 to 01:00 of 7 September (IANA tzdata).
        Events events = new Events("America/Santiago");
        events.add("farm-described", "farm", "2025-01-01 00:00", "zone: America/Santiago");
        Calf calf = new Calf(events, "A").born("2025-09-07", "alive: true");
        assertEquals("2025-09-07", calf.life().birthDate().toString());
        assertEquals(events.instant("2025-09-07 01:00"), calf.life().born().time());
        assertEquals(events.instant("2025-09-07 01:00"), calf.life().endOfDay(-1));
    }

    @Test
    void daysAreCountedInTheZoneOfTheFarmAtBirth() {
        Events events = Events.london();
        events.add("farm-described", "farm", "2026-01-01 00:00", "zone: Pacific/Auckland");
        Calf calf = new Calf(events, "A").born("2026-03-01 12:00", "alive: true");
        assertEquals("2026-03-02", calf.life().birthDate().toString());
        assertEquals(1, calf.life().dayOfLife(events.instant("2026-03-02 11:00")));
    }

    @Test
    void aDateWrittenAfterTheFarmMovedIsReadByItsNewClocksAndCountedByThoseOfBirth() {
        Events events = Events.london();
        events.add("farm-described", "farm", "2026-01-01 00:00", "zone: Europe/London");
        Calf calf = new Calf(events, "A").born("2026-03-01 12:00", "alive: true");
        events.add("farm-described", "farm", "2026-03-10 00:00", "zone: Europe/Berlin");
        events.in("Europe/Berlin");
        calf.at("2026-03-21", "tag-fitted", "number: UK1");
        assertEquals(20, calf.life().dayOfLife(calf.life().events().get(1).time()));
    }
}
