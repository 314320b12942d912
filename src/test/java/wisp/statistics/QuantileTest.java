package wisp.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.apache.commons.statistics.distribution.BetaDistribution;
import org.apache.commons.statistics.distribution.GammaDistribution;
import org.junit.jupiter.api.Test;

class QuantileTest {

    private static final double[] PROBABILITIES = {1e-13, 1e-6, 0.001, 0.025, 0.5, 0.975, 0.999, 1 - 1e-9};

    // Beta(1, b) has distribution function 1 - (1-x)^b, Beta(a, 1) has x^a.
    @Test
    void betaWithAOneHasAClosedForm() {
        for (double p : PROBABILITIES) {
            for (double shape : new double[] {0.05, 0.5, 3, 4000}) {
                ReferenceFile.assertClose(Math.pow(p, 1 / shape), Quantile.beta(p, shape, 1), 1e-9, "a " + shape);
                ReferenceFile.assertClose(
                        -Math.expm1(Math.log1p(-p) / shape), Quantile.beta(p, 1, shape), 1e-7, "b " + shape);
            }
        }
    }

    // Gamma(1) is exponential.
    @Test
    void gammaOfShapeOneIsExponential() {
        for (double p : PROBABILITIES) {
            ReferenceFile.assertClose(-Math.log1p(-p), Quantile.gamma(p, 1), 1e-7, "p " + p);
        }
    }

    @Test
    void smallQuantilesKeepTheirDigits() {
        for (double shape : new double[] {0.3, 2, 17, 900}) {
            double small = Quantile.gamma(1e-8, shape);
            ReferenceFile.assertClose(
                    1e-8, GammaDistribution.of(shape, 1).cumulativeProbability(small), 1e-9, "shape " + shape);
            double rare = Quantile.beta(0.025, shape, 1_000_000);
            ReferenceFile.assertClose(
                    0.025, BetaDistribution.of(shape, 1_000_000).cumulativeProbability(rare), 1e-9, "shape " + shape);
        }
    }

    @Test
    void aRootBeyondTheStartIsFoundOnEitherSide() {
        assertEquals(77, Quantile.rootBeyond(x -> x - 77, 0, 0.5), 1e-10);
        assertEquals(-77, Quantile.rootBeyond(x -> x + 77, 0, -0.5), 1e-10);
        assertThrows(CannotEstimate.class, () -> Quantile.rootBeyond(x -> 1, 0, 0.5));
    }
}
