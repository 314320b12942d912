package wisp.cohort;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wisp.history.Life;
import wisp.log.StoredEvent;
import wisp.testing.Calf;

class NavelDelayTest {

    private static Life treatedAt(Duration age) {
        Calf calf = Calf.bornAt("2026-03-01 07:30");
        calf.aged(age, "navel-treated", "product: iodine");
        return calf.life();
    }

    @ParameterizedTest(name = "{0} min is in {1}, just above in {2}")
    @CsvSource({
        "15, 0-15 min, 15-60 min",
        "60, 15-60 min, 1-2 h",
        "120, 1-2 h, 2-6 h",
        "360, 2-6 h, 6-24 h",
        "1440, 6-24 h, none by 24 h"
    })
    void aClassHoldsItsUpperBoundAndNothingAbove(long minutes, String at, String above) {
        Duration bound = Duration.ofMinutes(minutes);
        assertEquals(at, NavelDelay.of(treatedAt(bound)).word());
        assertEquals(minutes, NavelDelay.minutes(treatedAt(bound)));
        assertEquals(above, NavelDelay.of(treatedAt(bound.plusMillis(1))).word());
        assertEquals(above, NavelDelay.of(treatedAt(bound.plusNanos(1))).word());
    }

    @Test
    void aTreatmentAtBirthHasNoDelay() {
        assertEquals(0.0, NavelDelay.minutes(treatedAt(Duration.ZERO)));
        assertEquals(NavelDelay.TO_15_MIN, NavelDelay.of(treatedAt(Duration.ZERO)));
    }

    @Test
    void theFirstOfSeveralTreatmentsCounts() {
        Calf calf = Calf.bornAt("2026-03-01 07:30");
        calf.aged(Duration.ofHours(5), "navel-treated", "");
        StoredEvent first = calf.aged(Duration.ofMinutes(10), "navel-treated", "");
        calf.aged(Duration.ofMinutes(-5), "navel-treated", "");
        assertEquals(10.0, NavelDelay.minutes(calf.life()));
        calf.events().retract(first, "2026-03-02 09:00");
        assertEquals(NavelDelay.TO_6_H, NavelDelay.of(calf.life()));
    }

    @Test
    void withoutATreatmentOrWithOneTooLateThereIsNone() {
        Calf calf = Calf.bornAt("2026-03-01 07:30");
        assertEquals(NavelDelay.NONE_BY_24_H, NavelDelay.of(calf.life()));
        assertTrue(Double.isNaN(NavelDelay.minutes(calf.life())));
        calf.aged(Duration.ofHours(25), "navel-treated", "");
        assertEquals(NavelDelay.NONE_BY_24_H, NavelDelay.of(calf.life()));
        assertTrue(Double.isNaN(NavelDelay.minutes(calf.life())));
    }

    @Test
    void aBirthKnownOnlyByDateLeavesTheDelayUnknown() {
        Calf calf = Calf.bornAt("2026-03-01");
        assertEquals(NavelDelay.UNKNOWN, NavelDelay.of(calf.life()));
        calf.at("2026-03-01 08:00", "navel-treated", "");
        assertEquals(NavelDelay.UNKNOWN, NavelDelay.of(calf.life()));
        assertTrue(Double.isNaN(NavelDelay.minutes(calf.life())));
    }

    @ParameterizedTest(name = "treated on {0}: {1}")
    @CsvSource({"2026-03-01, UNKNOWN", "2026-03-02, UNKNOWN", "2026-03-03, NONE_BY_24_H"})
    void aTreatmentKnownOnlyByDateIsUnknownWhereItMayHaveBeenInside(String date, NavelDelay delay) {
        Calf calf = Calf.bornAt("2026-03-01 22:00");
        calf.at(date, "navel-treated", "");
        assertEquals(delay, NavelDelay.of(calf.life()));
        assertTrue(Double.isNaN(NavelDelay.minutes(calf.life())));
    }

    @Test
    void aTreatmentOfKnownHourBeforeOneKnownOnlyByDateCounts() {
        Calf calf = Calf.bornAt("2026-03-01 22:00");
        calf.at("2026-03-02", "navel-treated", "");
        calf.at("2026-03-01 22:30", "navel-treated", "");
        assertEquals(NavelDelay.TO_60_MIN, NavelDelay.of(calf.life()));
    }

    @Test
    void theNightOfTheClockChangeIsCountedInExactHours() {
        Calf spring = Calf.bornAt("2026-03-28 20:00");
        spring.at("2026-03-29 20:30", "navel-treated", "");
        assertEquals(NavelDelay.TO_24_H, NavelDelay.of(spring.life()), "23.5 h by the sun");
        Calf autumn = Calf.bornAt("2026-10-24 20:00");
        autumn.at("2026-10-25 19:30", "navel-treated", "");
        assertEquals(NavelDelay.NONE_BY_24_H, NavelDelay.of(autumn.life()), "24.5 h by the sun");
    }

    @Test
    void theClassesAreNamedInOrder() {
        assertEquals(
                List.of("0-15 min", "15-60 min", "1-2 h", "2-6 h", "6-24 h", "none by 24 h", "unknown"),
                NavelDelay.words());
    }
}
