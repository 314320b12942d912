package wisp.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;

class PosteriorRanksTest {

    // P(X1 > X2) of two normals is Φ((m1 - m2)/√(s1² + s2²)).
    @Test
    void twoNormalsHaveAClosedForm() {
        PosteriorRanks ranks = PosteriorRanks.integrate(List.of(normal(1.2, 0.4), normal(0.3, 1.1)));
        double first = NormalDistribution.of(0, 1).cumulativeProbability(0.9 / Math.hypot(0.4, 1.1));
        assertEquals(first, ranks.probabilityLargest().get(0), 1e-9);
        assertEquals(1 - first, ranks.probabilityLargest().get(1), 1e-9);
        assertEquals(2 - first, ranks.expectedRank().get(0), 1e-9);
    }

    // Of three exchangeable values each is the largest with chance 1/3 and has mean rank 2.
    @Test
    void threeAlikeShareTheChances() {
        PosteriorRanks ranks = PosteriorRanks.integrate(List.of(normal(5, 2), normal(5, 2), normal(5, 2)));
        for (int i = 0; i < 3; i++) {
            assertEquals(1.0 / 3, ranks.probabilityLargest().get(i), 1e-9);
            assertEquals(2, ranks.expectedRank().get(i), 1e-9);
        }
        assertEquals(
                ranks.expectedRank().get(0),
                PosteriorRanks.equal(3).expectedRank().get(0),
                1e-9);
    }

    @Test
    void groupsFarApartAreCertain() {
        PosteriorRanks ranks = PosteriorRanks.integrate(List.of(normal(0, 1), normal(100, 1), normal(50, 3)));
        assertEquals(1, ranks.probabilityLargest().get(1), 1e-9);
        assertEquals(
                List.of(3L, 1L, 2L),
                ranks.expectedRank().stream().map(Math::round).toList());
    }

    @Test
    void anIntegrationThatIsTooCoarseIsRefused() {
        assertThrows(
                CannotEstimate.class, () -> PosteriorRanks.integrate(List.of(normal(0.1234567, 1e-9), normal(0, 40))));
    }

    private static PosteriorRanks.Posterior normal(double mean, double deviation) {
        NormalDistribution normal = NormalDistribution.of(mean, deviation);
        return new PosteriorRanks.Posterior(
                normal::density, normal::cumulativeProbability, mean - 9 * deviation, mean + 9 * deviation, deviation);
    }
}
