package wisp.question.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class StandardisedTest {
    private static final String HEIFER = "alive: true, sex: female, dam_parity: 1";
    private static final String OLD_COW = "alive: true, sex: female, dam_parity: 4";
    private static final String HEIFER_DEAD = "alive: false, sex: female, dam_parity: 1";
    private static final String OLD_COW_DEAD = "alive: false, sex: female, dam_parity: 5";

    /**
     * S1: 2 of 10 from heifers and 3 of 30 from old cows; S2: 6 of 30 and 1 of 10. In each group the share is the same.
     */
    private static SeasonBook sameGroupsOtherMix() {
        return new SeasonBook()
                .born(8, "2025-03-01", HEIFER)
                .born(2, "2025-03-01", HEIFER_DEAD)
                .born(27, "2025-03-01", OLD_COW)
                .born(3, "2025-03-01", OLD_COW_DEAD)
                .born(24, "2026-03-01", HEIFER)
                .born(6, "2026-03-01", HEIFER_DEAD)
                .born(9, "2026-03-01", OLD_COW)
                .born(1, "2026-03-01", OLD_COW_DEAD)
                .followedTo("2026-09-01 12:00");
    }

    @Test
    void aDifferenceThatIsOnlyAnotherMixOfCalvesVanishes() {
        SeasonFigure stillbirth = sameGroupsOtherMix().figure("stillbirth");
        assertEquals(
                7.0 / 40 - 5.0 / 40,
                stillbirth.estimate().comparison().difference().value(),
                1e-12);
        Standardised mix = stillbirth.standardised();
        // the standard: 40 calves of heifers and 40 of old cows, so (0.2 + 0.1) / 2 in both seasons
        assertEquals(0.15, mix.now().value(), 1e-12);
        assertEquals(0.15, mix.before().value(), 1e-12);
        assertEquals(0, mix.difference().value(), 1e-12);
        assertTrue(mix.difference().low() < 0 && mix.difference().high() > 0);
        assertEquals(40, mix.counted());
    }

    @Test
    void aRateIsStandardisedByItsDaysAtRisk() {
        // deaths at noon on day 10, six hours past 10 days of age: 9.25 d from 24 h on; the others lend 59 d each
        SeasonBook book = new SeasonBook()
                .dead(1, "2025-03-01", 10, HEIFER, "")
                .born(1, "2025-03-01", OLD_COW)
                .born(1, "2026-03-01", HEIFER)
                .dead(1, "2026-03-01", 10, OLD_COW, "")
                .followedTo("2026-09-01 12:00");
        Standardised mix = book.figure("preweaning-mortality-rate").standardised();
        // each group has 68.25 days in both seasons together, half of the standard each
        assertEquals(0.5 * 1000 / 9.25, mix.now().value(), 1e-9);
        assertEquals(0.5 * 1000 / 9.25, mix.before().value(), 1e-9);
        assertEquals("direct standardisation, Fay-Feuer gamma", mix.now().method());
    }

    @Test
    void calvesOfUnknownParityOrSexAndGroupsOfOneSeasonAreLeftOutAndCounted() {
        SeasonBook book = sameGroupsOtherMix()
                .born(3, "2026-03-01", "alive: true, sex: female")
                .born(2, "2026-03-01", "alive: true, sex: unknown, dam_parity: 1")
                .born(4, "2025-03-01", "alive: true, sex: male, dam_parity: 2")
                .followedTo("2026-09-02 12:00");
        Standardised mix = book.figure("stillbirth").standardised();
        assertEquals(5, mix.leftOut());
        assertEquals(4, mix.leftOutBefore());
        assertEquals(2, mix.strata().size());
        assertEquals(0, mix.difference().value(), 1e-12);
    }

    @Test
    void withoutAGroupInCommonItSaysWhy() {
        SeasonBook book = new SeasonBook()
                .born(3, "2025-03-01", HEIFER)
                .born(3, "2026-03-01", OLD_COW)
                .followedTo("2026-09-01 12:00");
        Standardised mix = book.figure("stillbirth").standardised();
        assertNull(mix.difference());
        assertEquals("No group of parity and sex has calves with a figure in both seasons.", mix.why());
        assertEquals(3, mix.leftOut());
    }
}
