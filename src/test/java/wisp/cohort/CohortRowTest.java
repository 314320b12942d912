package wisp.cohort;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.time.Duration;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wisp.history.FarmHistory;
import wisp.testing.Calf;

class CohortRowTest {
    private static final Duration HALF_DAY = Duration.ofHours(12);

    private static CohortRow row(Calf calf) {
        return CohortRow.of(calf.life(), FarmHistory.of(calf.events().of(FarmHistory.SUBJECT)));
    }

    @Test
    void aScoringAtExactlyTwelveHoursCountsAndOneLaterDoesNot() {
        Calf calf = new Calf("A").born("2026-03-01 07:30", "alive: true, pen: P1");
        calf.aged(HALF_DAY.plusNanos(1), "cleanliness-scored", "score: 3, pen: P9");
        assertNull(row(calf).cleanlinessScore());
        assertEquals("P1", row(calf).cleanlinessPen());
        calf.aged(HALF_DAY, "cleanliness-scored", "score: 2, pen: P2");
        assertEquals(2, row(calf).cleanlinessScore());
        assertEquals("P2", row(calf).cleanlinessPen());
    }

    @Test
    void theFirstScoringCountsAndItsPenElseThatOfBirth() {
        Calf calf = new Calf("A").born("2026-03-01 07:30", "alive: true, pen: P1");
        calf.aged(Duration.ofHours(2), "cleanliness-scored", "score: 3, pen: P2");
        calf.aged(Duration.ofHours(1), "cleanliness-scored", "score: 0");
        assertEquals(0, row(calf).cleanlinessScore());
        assertEquals("P1", row(calf).cleanlinessPen());
    }

    @Test
    void withoutTheHoursOfBirthAndScoringNoScoreIsGiven() {
        Calf dated = Calf.bornAt("2026-03-01");
        dated.at("2026-03-01 08:00", "cleanliness-scored", "score: 1");
        assertNull(row(dated).cleanlinessScore());
        Calf scoredByDate = Calf.bornAt("2026-03-01 07:30");
        scoredByDate.at("2026-03-01", "cleanliness-scored", "score: 1");
        assertNull(row(scoredByDate).cleanlinessScore());
        scoredByDate.at("2026-03-01 09:30", "cleanliness-scored", "score: 2");
        assertEquals(2, row(scoredByDate).cleanlinessScore());
    }

    @ParameterizedTest(name = "{0} lies in {1}")
    @CsvSource({
        // ISO 8601: week 1 is the week with the year's first Thursday.
        "2024-12-29, 2024-W52",
        "2024-12-30, 2025-W01",
        "2026-12-31, 2026-W53",
        "2027-01-03, 2026-W53",
        "2027-01-04, 2027-W01",
        "2026-03-01, 2026-W09"
    })
    void theWeekIsThatOfIsoAtTheTurnOfTheYear(LocalDate date, String week) {
        assertEquals(week, CohortRow.week(date));
    }

    @Test
    void whatWasSaidAtBirthStandsInTheRow() {
        Calf calf = new Calf("A")
                .born(
                        "2026-06-30T23:30:00Z",
                        "alive: true, sex: male, dam: D1, breed: AA, pen: P1, ease: 3, litter_size: 2, dam_parity: 4, weight_kg: 41.5");
        CohortRow row = row(calf);
        assertEquals("2026-07-01", row.birthDate().toString());
        assertEquals("2026-W27", row.week());
        assertEquals("2026", row.season());
        assertEquals("male", row.sex());
        assertEquals("D1", row.dam());
        assertEquals("AA", row.breed());
        assertEquals("P1", row.pen());
        assertEquals(3, row.ease());
        assertEquals(2, row.litterSize());
        assertEquals(4, row.damParity());
        assertEquals(41.5, row.birthWeightKg());
        assertEquals(1, row.events());
        assertEquals(0, row.marks());
        assertNull(row.exit());
    }

    @Test
    void theExitIsNamedInWords() {
        Calf dead = new Calf("A").born("2026-03-01 07:30", "alive: false");
        assertEquals("born-dead", row(dead).exit());
        assertEquals(dead.life().born().time(), row(dead).exitAt());
        Calf died = Calf.bornAt("2026-03-01 07:30");
        died.at("2026-03-02 08:00", "died", "");
        assertEquals("died", row(died).exit());
        Calf left = Calf.bornAt("2026-03-01 07:30");
        left.at("2026-03-02 08:00", "left", "");
        assertEquals("left", row(left).exit());
    }

    @Test
    void withoutABirthOnlyKeyAndMarksAreFilled() {
        Calf unknown = new Calf("A");
        unknown.at("2026-03-02 08:00", "died", "");
        CohortRow row = row(unknown);
        assertEquals("A", row.calf());
        assertNull(row.bornAt());
        assertNull(row.season());
        assertNull(row.navelDelay());
        assertNull(row.exit());
        assertEquals(0, row.events());
        assertEquals(1, row.marks());
    }
}
