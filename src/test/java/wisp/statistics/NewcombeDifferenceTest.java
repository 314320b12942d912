package wisp.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;

class NewcombeDifferenceTest {

    // R 4.2.2: method 10 written out from two prop.test(correct = FALSE) intervals.
    @Test
    void theLimitsAreThoseWrittenOutFromPropTest() {
        ReferenceFile reference = ReferenceFile.read("newcombe-difference");
        int[] x1 = reference.integers("input/data/x1");
        int[] n1 = reference.integers("input/data/n1");
        int[] x2 = reference.integers("input/data/x2");
        int[] n2 = reference.integers("input/data/n2");
        for (int i = 0; i < x1.length; i++) {
            Interval interval = of(x1[i], n1[i], x2[i], n2[i]);
            ReferenceFile.assertClose(reference.numbers("expected/difference")[i], interval.value(), 1e-6, "value");
            ReferenceFile.assertClose(reference.numbers("expected/lower")[i], interval.low(), 1e-6, "low");
            ReferenceFile.assertClose(reference.numbers("expected/upper")[i], interval.high(), 1e-6, "high");
        }
    }

    // statsmodels 0.13.5: confint_proportions_2indep(method='newcomb', compare='diff')
    @Test
    void theLimitsAreThoseOfStatsmodels() {
        ReferenceFile reference = ReferenceFile.read("two-proportions-statsmodels");
        double[][] input = reference.matrix("input");
        for (int i = 0; i < input.length; i++) {
            Interval interval = of((int) input[i][0], (int) input[i][1], (int) input[i][2], (int) input[i][3]);
            double[] expected = reference.numbers("expected/" + i + "/diff:newcomb");
            ReferenceFile.assertClose(expected[0], interval.low(), 1e-6, "low");
            ReferenceFile.assertClose(expected[1], interval.high(), 1e-6, "high");
        }
    }

    // Printed values quoted from memory:
    // Newcombe 1998 Stat Med 17:873, Table II, method 10, printed to four places.
    @Test
    void thePrintedExamplesOfNewcombeAreMet() {
        assertPrinted(of(56, 70, 48, 80), 0.0524, 0.3339);
        assertPrinted(of(9, 10, 3, 10), 0.1705, 0.8090);
        assertPrinted(of(10, 10, 0, 20), 0.6791, 1.0000);
        assertPrinted(of(0, 10, 0, 20), -0.1611, 0.2775);
    }

    private static void assertPrinted(Interval interval, double low, double high) {
        assertEquals(low, interval.low(), 0.00005);
        assertEquals(high, interval.high(), 0.00005);
    }

    @Test
    void swappingTheGroupsTurnsTheSign() {
        Random random = new Random(20261);
        for (int i = 0; i < 200; i++) {
            int n1 = 1 + random.nextInt(60);
            int n2 = 1 + random.nextInt(60);
            int x1 = random.nextInt(n1 + 1);
            int x2 = random.nextInt(n2 + 1);
            Interval there = of(x1, n1, x2, n2);
            Interval back = of(x2, n2, x1, n1);
            String what = "seed 20261, draw " + i;
            assertEquals(there.low(), -back.high(), 1e-12, what);
            assertTrue(there.low() <= there.value() && there.value() <= there.high(), what);
            assertTrue(there.low() >= -1 - 1e-12 && there.high() <= 1 + 1e-12, what);
        }
    }

    @Test
    void theCoverageIsNearNominalForGroupsOfTenAndFifteen() {
        double sum = 0;
        double smallest = 1;
        int points = 0;
        for (double p1 = 0.05; p1 < 1; p1 += 0.1) {
            for (double p2 = 0.05; p2 < 1; p2 += 0.1) {
                double covered =
                        ExactCoverage.twoGroups(10, p1, 15, p2, p1 - p2, table -> NewcombeDifference.of(table, 0.95));
                sum += covered;
                smallest = Math.min(smallest, covered);
                points++;
            }
        }
        assertEquals(0.95, sum / points, 0.02);
        assertTrue(smallest > 0.85, "smallest coverage " + smallest);
    }

    @Test
    void groupsOfOneHaveAnIntervalAndEmptyGroupsAreRefused() {
        Interval one = of(1, 1, 0, 1);
        assertEquals(1, one.value());
        assertTrue(one.low() < 0);
        assertThrows(CannotEstimate.class, () -> of(0, 0, 1, 5));
        assertThrows(CannotEstimate.class, () -> of(1, 5, 0, 0));
        assertThrows(CannotEstimate.class, () -> of(6, 5, 0, 3));
        assertThrows(CannotEstimate.class, () -> NewcombeDifference.of(new TwoByTwoTable(1, 1, 1, 1), 1));
    }

    private static Interval of(int x1, int n1, int x2, int n2) {
        return NewcombeDifference.of(TwoByTwoTable.ofGroups(x1, n1, x2, n2), 0.95);
    }
}
