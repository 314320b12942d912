package wisp.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;

class WallClockTest {
    private final WallClock london = new WallClock(ZoneId.of("Europe/London"));

    @Test
    void aTimeCarriesTheOffsetOfItsDay() {
        assertEquals(OffsetDateTime.parse("2025-03-29T10:05:00Z"), london.at(minute("2025-03-29T10:05:00Z")));
        assertEquals(OffsetDateTime.parse("2025-03-30T11:05:00+01:00"), london.at(minute("2025-03-30T10:05:00Z")));
    }

    @Test
    void theNightRunsFromTenInTheEveningToSix() {
        assertFalse(london.night(minute("2025-01-10T21:59:00Z")));
        assertTrue(london.night(minute("2025-01-10T22:00:00Z")));
        assertTrue(london.night(minute("2025-01-10T05:59:00Z")));
        assertFalse(london.night(minute("2025-01-10T06:00:00Z")));
    }

    @Test
    void whatBeginsAtNightIsSeenTheNextMorningBetweenSixAndSeven() {
        Chance chance = new Chance(3);
        for (String at : new String[] {"2025-01-10T22:30:00Z", "2025-01-11T02:00:00Z"}) {
            long seen = london.whenSeen(minute(at), chance);
            assertEquals(LocalDate.of(2025, 1, 11), london.date(seen));
            assertEquals(6, london.hour(seen));
        }
    }

    @Test
    void whatBeginsByDayIsSeenAtOnce() {
        assertEquals(minute("2025-01-10T12:00:00Z"), london.whenSeen(minute("2025-01-10T12:00:00Z"), new Chance(3)));
    }

    private static long minute(String time) {
        return OffsetDateTime.parse(time).toEpochSecond() / 60;
    }
}
