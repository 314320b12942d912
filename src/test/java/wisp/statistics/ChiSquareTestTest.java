package wisp.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ChiSquareTestTest {

    private static final TwoByTwoTable BIRTHWT = new TwoByTwoTable(30, 44, 29, 86);

    // R 4.2.2: chisq.test(party)
    @Test
    void partyByGenderIsThatOfChisqTest() {
        ReferenceFile reference = ReferenceFile.read("chi-square-2x2");
        TestResult result = ChiSquareTest.pearson(table(reference.matrix("input/party")));
        ReferenceFile.assertClose(reference.number("expected/party/x2"), result.statistic(), 1e-6, "chi-square");
        ReferenceFile.assertClose(reference.number("expected/party/p"), result.pValue(), 1e-6, "p-value");
        assertEquals(reference.integer("expected/party/df"), result.degreesOfFreedom());
    }

    // R 4.2.2, epiR 2.0.57: epi.2by2()$massoc.detail$chi2.strata.uncor and chi2.strata.yates
    @ParameterizedTest
    @ValueSource(strings = {"two-by-two-birthwt", "two-by-two-doll-hill-1950", "two-by-two-epir-cats"})
    void theTwoByTwoTablesAreThoseOfEpiR(String name) {
        ReferenceFile reference = ReferenceFile.read(name);
        double[][] cells = reference.matrix("input/table");
        TwoByTwoTable table =
                new TwoByTwoTable((int) cells[0][0], (int) cells[0][1], (int) cells[1][0], (int) cells[1][1]);
        TestResult[] tests = {ChiSquareTest.pearson(table), ChiSquareTest.yates(table)};
        String[] paths = {"expected/chi2.strata.uncor/", "expected/chi2.strata.yates/"};
        for (int i = 0; i < 2; i++) {
            double statistic = reference.number(paths[i] + "test.statistic");
            ReferenceFile.assertClose(statistic, tests[i].statistic(), 1e-6, paths[i]);
            ReferenceFile.assertClose(reference.number(paths[i] + "p.value.2s"), tests[i].pValue(), 1e-6, paths[i]);
        }
    }

    // R 4.2.2: chisq.test(table) with and without correct
    @Test
    void theTwoByTwoTableIsThatOfChisqTest() {
        ReferenceFile reference = ReferenceFile.read("chi-square-2x2");
        TestResult yates = ChiSquareTest.yates(BIRTHWT);
        ReferenceFile.assertClose(reference.number("expected/yates/x2"), yates.statistic(), 1e-6, "Yates");
        ReferenceFile.assertClose(reference.number("expected/yates/p"), yates.pValue(), 1e-6, "Yates p");
        TestResult pearson = ChiSquareTest.pearson(BIRTHWT);
        ReferenceFile.assertClose(reference.number("expected/pearson/x2"), pearson.statistic(), 1e-6, "Pearson");
        ReferenceFile.assertClose(reference.number("expected/pearson/p"), pearson.pValue(), 1e-6, "Pearson p");
    }

    // R 4.2.2: chisq.test(job)
    @Test
    void jobSatisfactionIsThatOfChisqTest() {
        ReferenceFile reference = ReferenceFile.read("fisher-exact-rxc");
        TestResult result = ChiSquareTest.pearson(table(reference.matrix("input/table")));
        ReferenceFile.assertClose(reference.number("expected/chisq"), result.statistic(), 1e-6, "chi-square");
        ReferenceFile.assertClose(reference.number("expected/chisq_p"), result.pValue(), 1e-6, "p-value");
        assertEquals(reference.integer("expected/df"), result.degreesOfFreedom());
    }

    // R 4.2.2: prop.test(smokers, patients), the homogeneity of Fleiss 1981 p. 139
    @Test
    void homogeneityIsThatOfPropTest() {
        ReferenceFile reference = ReferenceFile.read("cochran-armitage-trend");
        TestResult result =
                ChiSquareTest.homogeneity(reference.integers("input/smokers"), reference.integers("input/patients"));
        String path = "expected/departure_from_homogeneity/";
        ReferenceFile.assertClose(reference.number(path + "chi2"), result.statistic(), 1e-6, "chi-square");
        ReferenceFile.assertClose(reference.number(path + "p"), result.pValue(), 1e-6, "p-value");
        assertEquals(3, result.degreesOfFreedom());
    }

    // Printed values quoted from memory:
    // Agresti 2007, An Introduction to Categorical Data Analysis, p. 39: party by gender, X² = 30.1, df = 2.
    @Test
    void thePrintedPartyExampleIsMet() {
        TestResult result = ChiSquareTest.pearson(new int[][] {{762, 327, 468}, {484, 239, 477}});
        assertEquals(30.1, result.statistic(), 0.05);
        assertEquals(2, result.degreesOfFreedom());
        assertTrue(result.pValue() < 0.0001);
    }

    @Test
    void emptyGroupsAreLeftOutOfHomogeneity() {
        TestResult with = ChiSquareTest.homogeneity(new int[] {3, 0, 8}, new int[] {20, 0, 21});
        TestResult without = ChiSquareTest.homogeneity(new int[] {3, 8}, new int[] {20, 21});
        assertEquals(without, with);
    }

    // Tables of the tea margins as far as the observed one or farther: 0, 1, 3 and 4 right, (1 + 16 + 16 + 1) / 70.
    @Test
    void theSimulatedPValueOfTheTeaTableIsNearTheExactOne() {
        double exact = 34.0 / 70;
        TestResult result = ChiSquareTest.simulated(new int[][] {{3, 1}, {1, 3}}, 20_000, 42);
        assertEquals(exact, result.pValue(), 4 * Math.sqrt(exact * (1 - exact) / 20_000));
        assertEquals("Pearson chi-square, 20000 random tables, seed 42", result.method());
    }

    @Test
    void theSimulatedPValueNearsTheDistributionWhereCountsAreMany() {
        int[][] counts = {{60, 50, 40}, {55, 52, 63}};
        double p = ChiSquareTest.pearson(counts).pValue();
        assertEquals(p, ChiSquareTest.simulated(counts, 20_000, 7).pValue(), 0.015);
    }

    @Test
    void theSameSeedGivesTheSamePValue() {
        int[][] counts = {{1, 3, 10}, {2, 9, 1}};
        assertEquals(ChiSquareTest.simulated(counts, 999, 5), ChiSquareTest.simulated(counts, 999, 5));
        assertTrue(ChiSquareTest.simulated(counts, 999, 5).pValue() >= 1.0 / 1000);
    }

    @Test
    void relabellingRowsAndColumnsChangesNothing() {
        Random random = new Random(20267);
        for (int draw = 0; draw < 100; draw++) {
            int[][] counts = new int[3][4];
            int[][] turned = new int[4][3];
            for (int i = 0; i < 3; i++) {
                for (int j = 0; j < 4; j++) {
                    counts[i][j] = 1 + random.nextInt(30);
                    turned[3 - j][2 - i] = counts[i][j];
                }
            }
            assertEquals(
                    ChiSquareTest.pearson(counts).statistic(),
                    ChiSquareTest.pearson(turned).statistic(),
                    1e-9,
                    "seed 20267, draw " + draw);
        }
    }

    @Test
    void yatesIsNeverMoreExtremeAndNeverNegative() {
        assertTrue(ChiSquareTest.yates(BIRTHWT).statistic()
                < ChiSquareTest.pearson(BIRTHWT).statistic());
        assertEquals(0, ChiSquareTest.yates(new TwoByTwoTable(5, 5, 5, 5)).statistic());
        assertEquals(0, ChiSquareTest.yates(new TwoByTwoTable(5, 5, 5, 4)).statistic(), 1e-12);
    }

    @Test
    void emptyRowsOrColumnsAreRefusedInASentence() {
        assertEquals(
                "The test of the table cannot be estimated because column 2 of the table has no count in it.",
                assertThrows(CannotEstimate.class, () -> ChiSquareTest.pearson(new int[][] {{3, 0}, {4, 0}}))
                        .getMessage());
        assertThrows(CannotEstimate.class, () -> ChiSquareTest.pearson(new int[][] {{0, 0}, {4, 1}}));
        assertThrows(CannotEstimate.class, () -> ChiSquareTest.pearson(new int[][] {{3, 4}}));
        assertThrows(CannotEstimate.class, () -> ChiSquareTest.pearson(new int[][] {{3, 4}, {3}}));
        assertThrows(CannotEstimate.class, () -> ChiSquareTest.pearson(new int[][] {{3, 4}, {3, -1}}));
        assertThrows(CannotEstimate.class, () -> ChiSquareTest.yates(new TwoByTwoTable(0, 4, 0, 5)));
        assertThrows(CannotEstimate.class, () -> ChiSquareTest.homogeneity(new int[] {0, 0}, new int[] {9, 4}));
        assertThrows(CannotEstimate.class, () -> ChiSquareTest.homogeneity(new int[] {1, 0}, new int[] {9, 0}));
        assertThrows(CannotEstimate.class, () -> ChiSquareTest.simulated(new int[][] {{1, 2}, {2, 1}}, 0, 1));
    }

    private static int[][] table(double[][] numbers) {
        int[][] counts = new int[numbers.length][numbers[0].length];
        for (int i = 0; i < counts.length; i++) {
            for (int j = 0; j < counts[i].length; j++) {
                counts[i][j] = (int) numbers[i][j];
            }
        }
        return counts;
    }
}
