package wisp.statistics;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;

class BernoulliCusumTest {

    // R 4.2.2: the path written out; surveillance 1.20.3 categoricalCUSUM gives the same first alarm.
    @Test
    void thePathAndTheFirstAlarmAreThoseOfR() {
        ReferenceFile reference = ReferenceFile.read("bernoulli-cusum");
        int[] y = reference.integers("input/y");
        boolean[] outcomes = new boolean[y.length];
        for (int t = 0; t < y.length; t++) {
            outcomes[t] = y[t] == 1;
        }
        BernoulliCusum chart = BernoulliCusum.likelihoodRatio(
                reference.number("input/p0"), reference.number("input/p1"), reference.number("input/h"));
        assertArrayEquals(reference.numbers("expected/path"), chart.path(outcomes), 1e-9);
        assertEquals(reference.integer("expected/first_at_or_over_h") - 1, chart.firstAlarm(outcomes));
        assertEquals(reference.integer("expected/surveillance/first_alarm") - 1, chart.firstAlarm(outcomes));
        assertEquals(-1, chart.firstAlarm(new boolean[50]));
    }

    // R 4.2.2: renewal argument over the states of a cycle
    @Test
    void theRunLengthOfTheLikelihoodRatioChartIsThatEnumeratedInR() {
        ReferenceFile reference = ReferenceFile.read("bernoulli-cusum-arl-exact");
        BernoulliCusum chart = BernoulliCusum.likelihoodRatio(
                reference.number("input/p0"), reference.number("input/p1"), reference.number("input/h"));
        double[] risks = reference.numbers("input/mu");
        for (int i = 0; i < risks.length; i++) {
            ReferenceFile.assertClose(
                    reference.numbers("expected/arl")[i], chart.averageRunLength(risks[i]), 1e-6, "risk " + risks[i]);
        }
    }

    // R 4.2.2: solve(I - Q) of the Markov chain on whole numbers
    @Test
    void theRunLengthOnWholeNumbersIsThatOfTheMarkovChain() {
        ReferenceFile reference = ReferenceFile.read("bernoulli-cusum-arl-lattice");
        BernoulliCusum chart = BernoulliCusum.wholeNumbers(reference.integer("input/k"), reference.integer("input/H"));
        double[] risks = reference.numbers("input/p");
        for (int i = 0; i < risks.length; i++) {
            ReferenceFile.assertClose(
                    reference.numbers("expected/arl")[i], chart.averageRunLength(risks[i]), 1e-6, "risk " + risks[i]);
        }
    }

    // Feller, An Introduction to Probability Theory, vol. I, 3rd ed. 1968, XIII.7: the mean wait for two cases in a row
    // is
    // (1 - p²)/((1 - p) p²) = (1 + p)/p².
    @Test
    void twoCasesInARowIsFellersWaitingTime() {
        for (double p : new double[] {0.01, 0.1, 0.5, 0.9}) {
            ReferenceFile.assertClose(
                    (1 + p) / (p * p), BernoulliCusum.wholeNumbers(1, 2).averageRunLength(p), 1e-10, "p " + p);
        }
    }

    @Test
    void aChartThatEveryCaseSignalsWaitsForTheFirst() {
        assertEquals(1 / 0.07, BernoulliCusum.wholeNumbers(3, 3).averageRunLength(0.07), 1e-9);
    }

    @Test
    void aHigherRiskSignalsSooner() {
        BernoulliCusum chart = BernoulliCusum.likelihoodRatio(0.05, 0.15, 2.5);
        double before = Double.POSITIVE_INFINITY;
        for (double risk = 0.02; risk < 0.9; risk += 0.03) {
            double length = chart.averageRunLength(risk);
            assertTrue(length < before && length >= 1);
            before = length;
        }
    }

    @Test
    void simulatedChartsWaitAsLongAsComputed() {
        Random random = new Random(20273);
        BernoulliCusum chart = BernoulliCusum.likelihoodRatio(0.1, 0.25, 1.7);
        double expected = chart.averageRunLength(0.2);
        double sum = 0;
        double squares = 0;
        int runs = 20_000;
        for (int run = 0; run < runs; run++) {
            double s = 0;
            int t = 0;
            while (s < chart.limit()) {
                s = Math.max(0, s + (random.nextDouble() < 0.2 ? chart.up() : chart.down()));
                t++;
            }
            sum += t;
            squares += (double) t * t;
        }
        double mean = sum / runs;
        double error = Math.sqrt((squares / runs - mean * mean) / runs);
        assertEquals(expected, mean, 4 * error, "seed 20273");
    }

    @Test
    void theLimitIsTheSmallestOfTheWantedRunLength() {
        BernoulliCusum chart = BernoulliCusum.withRunLength(0.1, 0.25, 500);
        assertTrue(chart.averageRunLength(0.1) >= 500);
        BernoulliCusum lower = new BernoulliCusum(chart.up(), chart.down(), chart.limit() - 1e-6);
        assertTrue(lower.averageRunLength(0.1) < 500);
    }

    @Test
    void impossibleChartsAreRefused() {
        assertEquals(
                "The Bernoulli CUSUM cannot be estimated because the raised risk, 0.1, is not above the acceptable one,"
                        + " 0.2.",
                assertThrows(CannotEstimate.class, () -> BernoulliCusum.likelihoodRatio(0.2, 0.1, 3))
                        .getMessage());
        assertThrows(CannotEstimate.class, () -> BernoulliCusum.likelihoodRatio(0, 0.1, 3));
        assertThrows(CannotEstimate.class, () -> BernoulliCusum.likelihoodRatio(0.1, 0.2, 0));
        assertThrows(CannotEstimate.class, () -> new BernoulliCusum(1, 1, 3));
        assertThrows(CannotEstimate.class, () -> new BernoulliCusum(1, -1, Double.NaN));
        assertThrows(
                CannotEstimate.class, () -> BernoulliCusum.wholeNumbers(1, 2).averageRunLength(1));
        assertThrows(CannotEstimate.class, () -> BernoulliCusum.withRunLength(0.1, 0.2, 1));
    }
}
