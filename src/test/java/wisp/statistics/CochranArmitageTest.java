package wisp.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static wisp.statistics.ReferenceFile.assertClose;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CochranArmitageTest {

    @Test
    void agreesWithPropTrendTestOnFleissSmokers() {
        // R 4.2.2, prop.trend.test(smokers, patients): Fleiss 1981, p. 139
        ReferenceFile fleiss = ReferenceFile.read("cochran-armitage-trend");
        int[] cases = fleiss.integers("input/smokers");
        int[] totals = fleiss.integers("input/patients");
        TrendTest equal = CochranArmitage.normal(cases, totals, new double[] {1, 2, 3, 4});
        assertClose(fleiss.number("expected/equal_scores/chi2"), equal.chiSquare(), 1e-9, "chi-square");
        assertClose(fleiss.number("expected/equal_scores/z"), equal.z(), 1e-9, "z");
        assertClose(fleiss.number("expected/equal_scores/p"), equal.pValue(), 1e-9, "p");
        TrendTest last = CochranArmitage.normal(cases, totals, fleiss.numbers("input/scores_b"));
        assertClose(fleiss.number("expected/scores_b/z"), last.z(), 1e-9, "z");
    }

    @Test
    void agreesWithPropTrendTestOnBirthWeight() {
        // R 4.2.2, prop.trend.test on MASS::birthwt
        ReferenceFile births = ReferenceFile.read("cochran-armitage-birthwt-race");
        TrendTest trend = CochranArmitage.normal(
                births.integers("input/cases"), births.integers("input/n"), new double[] {0, 1, 2});
        assertClose(births.number("expected/chi2"), trend.chiSquare(), 1e-9, "chi-square");
        assertClose(births.number("expected/p"), trend.pValue(), 1e-9, "p");
    }

    @Test
    void agreesWithThePrintedTrendOfMalformationsOverAlcohol() {
        // Printed values quoted from memory:
        // Graubard and Korn 1987; Agresti 2002, Categorical Data Analysis, section 5.3.5: z^2 = 6.57, P = 0.010, and
        // exact one-sided P = 0.0168 (Agresti, Mehta and Patel 1990)
        int[] cases = {48, 38, 5, 1, 1};
        int[] totals = {17114, 14502, 793, 127, 38};
        double[] drinks = {0, 0.5, 1.5, 4, 7};
        TrendTest normal = CochranArmitage.normal(cases, totals, drinks);
        assertEquals(6.57, normal.chiSquare(), 0.005);
        assertEquals(0.010, normal.pValue(), 0.0005);
        assertEquals(0.0168, CochranArmitage.exact(cases, totals, drinks).upperTail(), 0.00005);
    }

    @Test
    void withTwoGroupsTheExactTestIsFishers() {
        // Fisher 1935, lady tasting tea 3 of 4: one-sided 17/70, two-sided 34/70
        TrendTest tea = CochranArmitage.exact(new int[] {1, 3}, new int[] {4, 4}, new double[] {0, 1});
        assertEquals(17.0 / 70, tea.upperTail(), 1e-12);
        assertEquals(34.0 / 70, tea.pValue(), 1e-12);
    }

    @Test
    void permutationsComeToTheExactTest() {
        int[] cases = {1, 2, 5};
        int[] totals = {10, 9, 11};
        double[] scores = {0, 1, 3};
        TrendTest exact = CochranArmitage.exact(cases, totals, scores);
        TrendTest drawn = CochranArmitage.permutation(cases, totals, scores, 20_000, 7);
        double four = 4 * Math.sqrt(exact.pValue() * (1 - exact.pValue()) / 20_000);
        assertEquals(exact.pValue(), drawn.pValue(), four);
        assertEquals("Cochran-Armitage, 20000 permutations from seed 7", drawn.method());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.5, 3, 100})
    void neitherShiftNorUnitOfTheScoresMatters(double unit) {
        int[] cases = {1, 4, 5, 3};
        int[] totals = {12, 20, 11, 5};
        TrendTest plain = CochranArmitage.exact(cases, totals, new double[] {0, 1, 2, 3});
        TrendTest moved = CochranArmitage.exact(cases, totals, new double[] {-unit, 0, unit, 2 * unit});
        assertEquals(plain.z(), moved.z(), 1e-12);
        assertEquals(plain.pValue(), moved.pValue(), 1e-12);
        TrendTest falling = CochranArmitage.exact(cases, totals, new double[] {3, 2, 1, 0});
        assertEquals(-plain.z(), falling.z(), 1e-12);
        assertEquals(plain.pValue(), falling.pValue(), 1e-12);
    }

    @Test
    void withoutVariationThereIsNoTrend() {
        CannotEstimate none = assertThrows(
                CannotEstimate.class, () -> CochranArmitage.normal(new int[2], new int[] {3, 4}, new double[] {0, 1}));
        assertEquals(
                "The Cochran-Armitage trend cannot be estimated because the outcome does not vary: 0 cases of 7.",
                none.getMessage());
        CannotEstimate same = assertThrows(
                CannotEstimate.class,
                () -> CochranArmitage.exact(new int[] {1, 1}, new int[] {3, 4}, new double[] {2, 2}));
        assertTrue(same.getMessage().endsWith("all groups have the same score."));
    }
}
