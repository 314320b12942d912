package wisp.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class ChanceTest {
    private static final int DRAWS = 200_000;
    private static final long SEED = 20_241;

    private final Chance chance = new Chance(SEED);

    @Test
    void wordsAreThoseOfThePublishedGenerator() {
        // S. Vigna, splitmix64.c (2015), its first five outputs for seed 1234567, as unsigned decimals.
        Chance published = new Chance(1_234_567);
        for (String word : List.of(
                "6457827717110365317",
                "3203168211198807973",
                "9817491932198370423",
                "4593380528125082431",
                "16408922859458223821")) {
            assertEquals(word, Long.toUnsignedString(published.word()));
        }
    }

    @Test
    void exponentialsHaveMeanOneAndVarianceOne() {
        double[] moments = moments(chance::exponential);
        assertEquals(1, moments[0], 4 / Math.sqrt(DRAWS), "seed " + SEED);
        assertEquals(1, moments[1], 4 * Math.sqrt(8.0 / DRAWS), "seed " + SEED);
    }

    @Test
    void normalsHaveMeanZeroAndVarianceOne() {
        double[] moments = moments(chance::normal);
        assertEquals(0, moments[0], 4 / Math.sqrt(DRAWS), "seed " + SEED);
        assertEquals(1, moments[1], 4 * Math.sqrt(2.0 / DRAWS), "seed " + SEED);
    }

    @Test
    void sharesNeedNotAddUpToOne() {
        int[] counts = new int[3];
        for (int i = 0; i < DRAWS; i++) {
            counts[chance.index(List.of(1.0, 0.0, 3.0))]++;
        }
        assertEquals(0, counts[1]);
        assertEquals(0.25, counts[0] / (double) DRAWS, 4 * Math.sqrt(0.25 * 0.75 / DRAWS), "seed " + SEED);
    }

    @Test
    void wholeNumbersReachBothEnds() {
        boolean[] seen = new boolean[8];
        for (int i = 0; i < 1000; i++) {
            seen[chance.whole(2, 7)] = true;
        }
        assertTrue(!seen[0] && !seen[1] && seen[2] && seen[3] && seen[4] && seen[5] && seen[6] && seen[7]);
    }

    private static double[] moments(java.util.function.DoubleSupplier draw) {
        double sum = 0;
        double squares = 0;
        for (int i = 0; i < DRAWS; i++) {
            double x = draw.getAsDouble();
            sum += x;
            squares += x * x;
        }
        double mean = sum / DRAWS;
        return new double[] {mean, squares / DRAWS - mean * mean};
    }
}
