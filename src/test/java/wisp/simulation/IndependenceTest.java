package wisp.simulation;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import wisp.event.EventType;

/** Seasons have no luck of their own: counts vary from season to season as those of independent calves do. */
class IndependenceTest {
    private static final long FIRST_SEED = 9000;
    private static final int SEASONS = 400;
    private static final int CALVES = 200;

    private final double[] deaths = new double[SEASONS];
    private final double[] ill = new double[SEASONS];

    @Test
    void deathAndSicknessVaryBetweenSeasonsAsAmongIndependentCalves() {
        for (int s = 0; s < SEASONS; s++) {
            int season = s;
            Season.eachLife(StandardModel.model(), CALVES, FIRST_SEED + s, life -> {
                deaths[season] += has(life, EventType.DIED);
                ill[season] += has(life, EventType.ILLNESS_FOUND);
            });
        }
        assertBinomial("deaths", deaths);
        assertBinomial("calves found ill", ill);
    }

    private static int has(SimulatedLife life, EventType type) {
        return life.events().stream().anyMatch(e -> e.type() == type) ? 1 : 0;
    }

    private static void assertBinomial(String what, double[] counts) {
        double mean = Arrays.stream(counts).average().orElseThrow();
        double squares = Arrays.stream(counts).map(c -> (c - mean) * (c - mean)).sum();
        double dispersion = squares / (mean * (1 - mean / CALVES)) / (SEASONS - 1);
        System.out.printf("%s: dispersion %.3f, seeds from %d%n", what, dispersion, FIRST_SEED);
        // χ² over its degrees of freedom: standard deviation √(2 / 399) = 0.071; twins add at most a few hundredths.
        assertTrue(dispersion > 1 - 4 * 0.071 && dispersion < 1.05 + 4 * 0.071, what + " " + dispersion);
    }
}
