package wisp.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.apache.commons.statistics.distribution.HypergeometricDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FisherExactTestTest {

    private static final TwoByTwoTable TEA = new TwoByTwoTable(3, 1, 1, 3);

    // R 4.2.2: fisher.test(table)$p.value
    @ParameterizedTest
    @ValueSource(strings = {"fisher-exact-tea", "fisher-exact-twins", "fisher-zero-cell"})
    void theTwoSidedValueIsThatOfFisherTest(String name) {
        ReferenceFile reference = ReferenceFile.read(name);
        ReferenceFile.assertClose(
                reference.number("expected/p_two"), FisherExactTest.twoSided(table(reference)), 1e-6, name);
    }

    // R 4.2.2, epiR 2.0.57: epi.2by2()$massoc.detail$chi2.strata.fisher
    @ParameterizedTest
    @ValueSource(strings = {"two-by-two-birthwt", "two-by-two-doll-hill-1950"})
    void theTwoSidedValueIsThatOfEpiR(String name) {
        ReferenceFile reference = ReferenceFile.read(name);
        String path = "expected/chi2.strata.fisher/";
        TwoByTwoTable table = table(reference);
        ReferenceFile.assertClose(reference.number(path + "p.value.2s"), FisherExactTest.twoSided(table), 1e-6, name);
    }

    // R 4.2.2: fisher.test(alternative =), epitools 0.5.10.1: ormidp.test()
    @Test
    void theOneSidedAndMidPValuesAreThoseOfR() {
        ReferenceFile tea = ReferenceFile.read("fisher-exact-tea");
        ReferenceFile.assertClose(tea.number("expected/p_greater"), FisherExactTest.greater(TEA), 1e-6, "greater");
        ReferenceFile.assertClose(tea.number("expected/midp/two.sided"), FisherExactTest.midP(TEA), 1e-6, "mid-p");
        ReferenceFile twins = ReferenceFile.read("fisher-exact-twins");
        ReferenceFile.assertClose(twins.number("expected/p_less"), FisherExactTest.less(table(twins)), 1e-6, "less");
        ReferenceFile.assertClose(
                twins.number("expected/midp/two.sided"), FisherExactTest.midP(table(twins)), 1e-6, "mid-p");
    }

    // Fisher 1935, The Design of Experiments: with three of four cups right, 17 of the 70 orders are as good or better.
    @Test
    void theLadyTastingTeaCanBeAddedUpByHand() {
        assertEquals(17.0 / 70, FisherExactTest.greater(TEA), 1e-12);
        assertEquals(34.0 / 70, FisherExactTest.twoSided(TEA), 1e-12);
        assertEquals(1.0 / 70, FisherExactTest.greater(new TwoByTwoTable(4, 0, 0, 4)), 1e-12);
        assertEquals((1 + 8) / 70.0 * 2, FisherExactTest.midP(TEA), 1e-12);
    }

    // R 4.2.2: fisher.test(job), exact by the network algorithm; Agresti 2002 p. 57 prints p = 0.78 for it.
    @Test
    void theSimulatedValueOfJobSatisfactionIsNearTheExactOne() {
        ReferenceFile reference = ReferenceFile.read("fisher-exact-rxc");
        double[][] numbers = reference.matrix("input/table");
        int[][] counts = new int[4][4];
        for (int i = 0; i < 4; i++) {
            for (int j = 0; j < 4; j++) {
                counts[i][j] = (int) numbers[i][j];
            }
        }
        double exact = reference.number("expected/fisher_p");
        double p = FisherExactTest.simulated(counts, 20_000, 11);
        assertEquals(exact, p, 4 * Math.sqrt(exact * (1 - exact) / 20_000));
        assertEquals(p, FisherExactTest.simulated(counts, 20_000, 11));
    }

    @Test
    void swappingRowsOrColumnsLeavesTheTwoSidedValues() {
        Random random = new Random(20268);
        for (int draw = 0; draw < 200; draw++) {
            int a = 1 + random.nextInt(12);
            int b = 1 + random.nextInt(12);
            int c = 1 + random.nextInt(12);
            int d = 1 + random.nextInt(12);
            TwoByTwoTable table = new TwoByTwoTable(a, b, c, d);
            TwoByTwoTable rows = new TwoByTwoTable(c, d, a, b);
            TwoByTwoTable columns = new TwoByTwoTable(b, a, d, c);
            String what = "seed 20268, draw " + draw;
            assertEquals(FisherExactTest.twoSided(table), FisherExactTest.twoSided(rows), 1e-10, what);
            assertEquals(FisherExactTest.midP(table), FisherExactTest.midP(columns), 1e-10, what);
            assertEquals(FisherExactTest.greater(table), FisherExactTest.less(rows), 1e-10, what);
            assertTrue(FisherExactTest.midP(table) <= 1, what);
        }
    }

    @Test
    void givenTheMarginsTheRejectionRateIsAtMostTheLevel() {
        HypergeometricDistribution cases = HypergeometricDistribution.of(31, 12, 14);
        double rejected = 0;
        for (int a = 0; a <= 12; a++) {
            if (FisherExactTest.twoSided(TwoByTwoTable.ofGroups(a, 14, 12 - a, 17)) <= 0.05) {
                rejected += cases.probability(a);
            }
        }
        assertTrue(rejected <= 0.05 && rejected > 0.001, "rejection rate " + rejected);
    }

    @Test
    void oneInEachGroupHasNothingLessLikely() {
        assertEquals(1, FisherExactTest.twoSided(new TwoByTwoTable(1, 0, 0, 1)), 1e-12);
    }

    @Test
    void anEmptyMarginIsRefusedInASentence() {
        assertEquals(
                "Fisher's exact test cannot be estimated because everyone has the same outcome, so that there is"
                        + " nothing to test.",
                assertThrows(CannotEstimate.class, () -> FisherExactTest.twoSided(new TwoByTwoTable(0, 4, 0, 5)))
                        .getMessage());
        assertThrows(CannotEstimate.class, () -> FisherExactTest.midP(new TwoByTwoTable(4, 0, 5, 0)));
        assertThrows(CannotEstimate.class, () -> FisherExactTest.less(new TwoByTwoTable(0, 0, 5, 2)));
        assertThrows(CannotEstimate.class, () -> FisherExactTest.greater(new TwoByTwoTable(3, 1, 0, 0)));
        assertThrows(CannotEstimate.class, () -> FisherExactTest.simulated(new int[][] {{1, 2}, {0, 0}}, 99, 1));
        assertThrows(CannotEstimate.class, () -> FisherExactTest.simulated(new int[][] {{1, 2}, {2, 2}}, 0, 1));
    }

    private static TwoByTwoTable table(ReferenceFile reference) {
        double[][] cells = reference.matrix("input/table");
        return new TwoByTwoTable((int) cells[0][0], (int) cells[0][1], (int) cells[1][0], (int) cells[1][1]);
    }
}
