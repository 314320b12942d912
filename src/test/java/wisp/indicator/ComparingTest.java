package wisp.indicator;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import wisp.statistics.Interval;

class ComparingTest {
    private static final Definitions SHIPPED = Definitions.load(null);

    @Test
    void allOfThreeAgainstNoneOfThreeHasFishersP() {
        // of the 20 ways to place 3 cases among 6 calves two are as extreme
        Comparison comparison = Comparing.withSeason(share("2026", 3, 3), share("2025", 0, 3));
        assertEquals(2.0 / 20, comparison.p(), 1e-12);
        assertEquals(1, comparison.difference().value());
        assertNull(comparison.ratio());
    }

    @Test
    void anIntervalThatLeavesNoughtOutIsNotEnoughWhereTheExactTestSaysChance() {
        Comparison comparison = Comparing.withSeason(share("2026", 3, 3), share("2025", 0, 3));
        assertTrue(comparison.difference().low() > 0);
        assertEquals(
                "100.0 percentage points higher than 2025 (95 % interval 20.6 percentage points higher to 100.0"
                        + " percentage points higher): could be chance, as an exact test gives p = 0.10.",
                comparison.words());
    }

    @Test
    void aClearDifferenceIsSaidToBeMoreThanChance() {
        Comparison comparison = Comparing.withSeason(share("2026", 5, 100), share("2025", 30, 100));
        // Newcombe's method 10 by hand: Wilson 0.0215-0.1118 and 0.2189-0.3958
        assertEquals(
                -0.25 - Math.hypot(0.05 - 0.02154, 0.39585 - 0.3),
                comparison.difference().low(),
                1e-4);
        assertEquals(
                -0.25 + Math.hypot(0.11175 - 0.05, 0.3 - 0.21895),
                comparison.difference().high(),
                1e-4);
        assertEquals(
                "25.0 percentage points lower than 2025 (95 % interval 35.0 percentage points lower to 14.8 percentage"
                        + " points lower): more than chance.",
                comparison.words());
    }

    @Test
    void theSameIsSaidToBeTheSame() {
        String words = Comparing.withSeason(share("2026", 5, 50), share("2025", 10, 100))
                .words();
        assertTrue(words.startsWith("The same as 2025 (95 % interval "), words);
    }

    @Test
    void aSeasonWithoutAnEstimateIsNotCompared() {
        Comparison comparison = Comparing.withSeason(share("2026", 5, 50), share("2025", 0, 0));
        assertEquals("It cannot be compared with 2025: one of the two has no estimate.", comparison.words());
        assertTrue(Double.isNaN(comparison.p()));
        assertNull(comparison.difference());
    }

    @Test
    void twoSeasonsWithoutACaseHaveNothingToTest() {
        Comparison comparison = Comparing.withSeason(share("2026", 0, 20), share("2025", 0, 30));
        assertTrue(Double.isNaN(comparison.p()));
        assertTrue(comparison.words().startsWith("The same as 2025"), comparison.words());
    }

    @Test
    void ratesAreTestedByTheirShareOfTheDays() {
        // five episodes of five fall in one of two equally long spans: twice (1/2)^5
        Comparison comparison = Comparing.withSeason(rate(5, 1000), rate(0, 1000));
        assertEquals(2.0 / 32, comparison.p(), 1e-12);
        assertTrue(comparison.words().contains(" per 1000 calf-days "), comparison.words());
    }

    @Test
    void strataAreHeldAgainstAllOthersWithHolmsAdjustment() {
        List<Estimate> strata = List.of(share("a", 8, 10), share("b", 1, 10), share("c", 1, 10));
        List<Estimate> compared = Comparing.withOthers(share("", 10, 30), strata);
        double[] p = compared.stream().mapToDouble(one -> one.comparison().p()).toArray();
        assertEquals(2, compared.get(0).comparison().other().numerator());
        assertEquals(20, compared.get(0).comparison().other().denominator());
        assertTrue(p[0] < p[1]);
        assertEquals(p[1], p[2], 1e-12);
        // Holm 1979: the smallest times 3, the next times 2, never falling
        assertEquals(3 * p[0], compared.get(0).comparison().adjustedP(), 1e-12);
        assertEquals(2 * p[1], compared.get(1).comparison().adjustedP(), 1e-12);
        assertEquals(2 * p[1], compared.get(2).comparison().adjustedP(), 1e-12);
        assertEquals(3, compared.get(0).comparison().comparisons());
    }

    @Test
    void oneOfManyComparisonsMayLoseItsClaim() {
        List<Estimate> strata = new ArrayList<>();
        strata.add(share("a", 6, 10));
        for (int i = 0; i < 9; i++) {
            strata.add(share("pen " + i, 2, 10));
        }
        Comparison first =
                Comparing.withOthers(share("", 24, 100), strata).get(0).comparison();
        assertTrue(first.difference().low() > 0 && first.p() < 0.05, first.toString());
        assertTrue(
                first.words()
                        .matches(
                                ".*: could be chance, once all 10 comparisons are allowed for \\(p = 0\\.\\d\\d\\)\\."),
                first.words());
    }

    @Test
    void wordsNeverClaimMoreThanIntervalAndPValue() {
        long seed = 20265;
        Random random = new Random(seed);
        int claims = 0;
        for (int i = 0; i < 300; i++) {
            List<Estimate> strata = new ArrayList<>();
            for (int k = 0; k < 2 + random.nextInt(3); k++) {
                int n = 1 + random.nextInt(40);
                strata.add(share("pen " + k, random.nextInt(n + 1), n));
            }
            for (Estimate one : Comparing.withOthers(share("", 1, 2), strata)) {
                Comparison comparison = one.comparison();
                Interval difference = comparison.difference();
                if (comparison.words().endsWith("more than chance.")) {
                    claims++;
                    assertTrue(comparison.adjustedP() < 0.05, "seed " + seed + ", round " + i);
                    assertTrue(difference.low() > 0 || difference.high() < 0, "seed " + seed + ", round " + i);
                }
            }
        }
        assertTrue(claims > 20, "claims: " + claims);
    }

    @Test
    void calvesThatLeftAreComparedOnTheScaleOfTheLogHazard() {
        Estimate some = risk("2026", 30, 10, 10);
        Estimate same = risk("2025", 30, 10, 10);
        Estimate more = risk("2024", 30, 25, 10);
        assertFalse(some.interval().method().equals(share("", 1, 2).interval().method()));
        assertEquals(1, Comparing.withSeason(some, same).p(), 1e-12);
        // Greenwood by hand: S 30/40 with 10 deaths of 40 at once, S 30/55 with 25 of 55
        double a = -Math.log(30.0 / 40);
        double b = -Math.log(30.0 / 55);
        double se = Math.hypot(Math.sqrt(10.0 / (40 * 30)) / a, Math.sqrt(25.0 / (55 * 30)) / b);
        double z = Math.abs(Math.log(a) - Math.log(b)) / se;
        double p = 2 * NormalDistribution.of(0, 1).survivalProbability(z);
        assertEquals(p, Comparing.withSeason(some, more).p(), 1e-9);
    }

    @Test
    void nobodyDeadBesideManyDeadIsMoreThanChanceThoughCalvesLeft() {
        Comparison comparison = Comparing.withSeason(risk("2026", 60, 30, 10), risk("2025", 90, 0, 10));
        // at most twice the chance that all 30 deaths of 190 calves fall among the 100, C(100, 30) / C(190, 30)
        double oneSided = 1;
        for (int i = 0; i < 30; i++) {
            oneSided *= (100.0 - i) / (190 - i);
        }
        assertTrue(comparison.p() >= oneSided && comparison.p() <= 2 * oneSided, "p " + comparison.p());
        assertTrue(comparison.words().endsWith(": more than chance."), comparison.words());
    }

    @Test
    void calvesThatLeftArePlacedSoThatARiskOfNoughtClaimsLeast() {
        // of 20 ways two are as extreme; the two that left the season without deaths are not counted for it
        assertEquals(
                2.0 / 20,
                Comparing.withSeason(risk("2026", 0, 3, 0), risk("2025", 3, 0, 2))
                        .p(),
                1e-12);
        // 5 dead of 40, of which 31 left, beside none of 40: 2 C(40, 5) / C(80, 5)
        Comparison comparison = Comparing.withSeason(risk("2026", 4, 5, 31), risk("2025", 40, 0, 0));
        assertEquals(2 * 658_008 / 24_040_016.0, comparison.p(), 1e-9);
        assertTrue(comparison.words().contains("could be chance"), comparison.words());
    }

    @Test
    void twoRisksOfNoughtHaveNothingToTestThoughCalvesLeft() {
        assertTrue(Double.isNaN(Comparing.withSeason(risk("2026", 20, 0, 3), risk("2025", 30, 0, 2))
                .p()));
    }

    private static Estimate share(String name, int cases, int calves) {
        List<Verdict> verdicts = new ArrayList<>();
        for (int i = 0; i < calves; i++) {
            verdicts.add(Verdict.settled(i, i < cases, null));
        }
        return Estimator.estimate(indicator("stillbirth"), name, name, verdicts, Map.of());
    }

    private static Estimate rate(int episodes, double days) {
        return Estimator.estimate(
                indicator("diarrhoea-rate"),
                "",
                "2025",
                List.of(Verdict.rated(0, days, episodes, false, null)),
                Map.of());
    }

    /** Calves that live to 60 d, those that die at 20 d, those that leave at 10 d. */
    private static Estimate risk(String season, int live, int die, int leave) {
        List<Verdict> verdicts = new ArrayList<>();
        for (int i = 0; i < live + die + leave; i++) {
            Verdict.Ending ending = i < live
                    ? Verdict.Ending.COMPLETE
                    : i < live + die ? Verdict.Ending.OUTCOME : Verdict.Ending.CENSORED;
            double days = i < live ? 59 : i < live + die ? 20 : 10;
            verdicts.add(Verdict.followed(i, days, ending, false, null));
        }
        return Estimator.estimate(indicator("preweaning-mortality"), "", season, verdicts, Map.of());
    }

    private static Indicator indicator(String id) {
        return SHIPPED.indicator(id).orElseThrow();
    }
}
