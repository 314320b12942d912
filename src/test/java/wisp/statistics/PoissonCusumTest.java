package wisp.statistics;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.apache.commons.statistics.distribution.PoissonDistribution;
import org.junit.jupiter.api.Test;

class PoissonCusumTest {

    // R 4.2.2: the path written out; surveillance 1.20.3: arlCusum(h = 5, k = 3)
    @Test
    void thePathAndTheRunLengthsAreThoseOfR() {
        ReferenceFile reference = ReferenceFile.read("poisson-cusum");
        double k = PoissonCusum.referenceValue(reference.number("input/m0"), reference.number("input/m1"));
        ReferenceFile.assertClose(reference.number("expected/k"), k, 1e-6, "k");
        int[] counts = reference.integers("input/y");
        PoissonCusum chart = new PoissonCusum(k, reference.number("input/h"));
        assertArrayEquals(reference.numbers("expected/path"), chart.path(counts), 1e-9);
        assertEquals(reference.integer("expected/first_alarm") - 1, chart.firstAlarm(counts));
        assertEquals(-1, chart.firstAlarm(new int[] {1, 2, 3}));
        PoissonCusum whole = new PoissonCusum(3, 5);
        ReferenceFile.assertClose(
                reference.number("expected/arl_k3_h5_theta2"), whole.averageRunLength(2), 1e-6, "mean 2");
        ReferenceFile.assertClose(
                reference.number("expected/arl_k3_h5_theta4"), whole.averageRunLength(4), 1e-6, "mean 4");
    }

    // R 4.2.2: solve(I - Q) of the Markov chain on whole numbers
    @Test
    void theRunLengthOnWholeNumbersIsThatOfTheMarkovChain() {
        ReferenceFile reference = ReferenceFile.read("poisson-cusum-arl-lattice");
        PoissonCusum chart = new PoissonCusum(reference.number("input/k"), reference.number("input/H"));
        double[] means = reference.numbers("input/mu");
        for (int i = 0; i < means.length; i++) {
            ReferenceFile.assertClose(
                    reference.numbers("expected/arl")[i], chart.averageRunLength(means[i]), 1e-6, "mean " + means[i]);
        }
    }

    // Lucas 1985 Technometrics 27:129: k = (m1 - m0)/(log m1 - log m0); between 1 and e that is e - 1.
    @Test
    void lucasReferenceValueLiesBetweenTheMeans() {
        assertEquals(Math.E - 1, PoissonCusum.referenceValue(1, Math.E), 1e-12);
        for (double m1 = 1.1; m1 < 9; m1 += 0.7) {
            double k = PoissonCusum.referenceValue(1, m1);
            assertTrue(k > 1 && k < m1);
        }
    }

    // The tables of Lucas 1985 were not found in searching, so that a closed form stands in: with k = h = 1/2 any count
    // above 0 signals, so the wait is geometric: 1/(1 - exp(-m)).
    @Test
    void aChartThatAnyEventSignalsWaitsForTheFirst() {
        assertEquals(1 / (1 - Math.exp(-0.3)), new PoissonCusum(0.5, 0.5).averageRunLength(0.3), 1e-9);
    }

    // k = 0.9 does not add up exactly in binary; ten times the chart is the chart on whole numbers of tens.
    @Test
    void fractionsThatDoNotAddUpExactlyStillMeetTheirLimit() {
        PoissonCusum chart = new PoissonCusum(0.9, 0.3);
        assertEquals(2, chart.firstAlarm(new int[] {1, 1, 1}));
    }

    @Test
    void simulatedChartsWaitAsLongAsComputed() {
        Random random = new Random(20274);
        PoissonCusum chart = new PoissonCusum(1.443, 3.7);
        PoissonDistribution counts = PoissonDistribution.of(1.4);
        double sum = 0;
        double squares = 0;
        int runs = 20_000;
        for (int run = 0; run < runs; run++) {
            double s = 0;
            int t = 0;
            while (s < chart.limit()) {
                s = Math.max(0, s + draw(counts, random) - chart.reference());
                t++;
            }
            sum += t;
            squares += (double) t * t;
        }
        double mean = sum / runs;
        double error = Math.sqrt((squares / runs - mean * mean) / runs);
        assertEquals(chart.averageRunLength(1.4), mean, 4 * error, "seed 20274");
    }

    private static int draw(PoissonDistribution counts, Random random) {
        double u = random.nextDouble();
        int y = 0;
        while (u > counts.probability(y)) {
            u -= counts.probability(y);
            y++;
        }
        return y;
    }

    @Test
    void theLimitIsTheSmallestOfTheWantedRunLength() {
        PoissonCusum chart = PoissonCusum.withRunLength(2, 4, 370);
        assertTrue(chart.averageRunLength(2) >= 370);
        assertTrue(new PoissonCusum(chart.reference(), chart.limit() - 1e-6).averageRunLength(2) < 370);
        assertTrue(chart.averageRunLength(4) < 10);
    }

    @Test
    void impossibleChartsAreRefused() {
        assertThrows(CannotEstimate.class, () -> PoissonCusum.referenceValue(2, 2));
        assertThrows(CannotEstimate.class, () -> PoissonCusum.referenceValue(0, 2));
        assertThrows(CannotEstimate.class, () -> new PoissonCusum(0, 2));
        assertThrows(CannotEstimate.class, () -> new PoissonCusum(1, Double.POSITIVE_INFINITY));
        assertThrows(CannotEstimate.class, () -> new PoissonCusum(1, 2).path(new int[] {-1}));
        assertThrows(CannotEstimate.class, () -> new PoissonCusum(1, 2).averageRunLength(0));
        assertThrows(CannotEstimate.class, () -> PoissonCusum.withRunLength(1, 2, Double.NaN));
    }
}
