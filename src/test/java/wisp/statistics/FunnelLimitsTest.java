package wisp.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static wisp.statistics.FunnelLimits.Method.EXACT_BINOMIAL_INTERPOLATED;
import static wisp.statistics.FunnelLimits.Method.EXACT_BINOMIAL_QUANTILE;

import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class FunnelLimitsTest {

    // R 4.2.2: qbinom and pbinom with the interpolation of Spiegelhalter 2005, appendix A.1.1; herds of lme4's cbpp.
    @Test
    void theLimitsAreThoseWrittenOutFromQbinom() {
        ReferenceFile reference = ReferenceFile.read("funnel-limits-binomial");
        double target = reference.number("expected/p0");
        int[] n = reference.integers("input/data/size");
        double[] tails = reference.numbers("input/probs");
        for (int i = 0; i < n.length; i++) {
            double[] interpolated = reference.matrix("expected/interpolated")[i];
            double[] plain = reference.matrix("expected/plain_quantile")[i];
            for (int j = 0; j < tails.length; j++) {
                String what = "n = " + n[i] + ", p = " + tails[j];
                ReferenceFile.assertClose(
                        interpolated[j],
                        FunnelLimits.limit(n[i], target, tails[j], EXACT_BINOMIAL_INTERPOLATED),
                        1e-6,
                        what);
                ReferenceFile.assertClose(
                        plain[j], FunnelLimits.limit(n[i], target, tails[j], EXACT_BINOMIAL_QUANTILE), 1e-6, what);
            }
            FunnelLimits drawn = FunnelLimits.of(n[i], target, 0.998, EXACT_BINOMIAL_INTERPOLATED);
            assertEquals(Math.max(0, interpolated[0]), drawn.low(), 1e-8);
            assertEquals(interpolated[3], drawn.high(), 1e-8);
        }
    }

    // R 4.2.2: (x/n - p0) / sqrt(p0 (1 - p0) / n)
    @Test
    void theZScoresAreThoseWrittenOut() {
        ReferenceFile reference = ReferenceFile.read("funnel-limits-binomial");
        int[] x = reference.integers("input/data/incidence");
        int[] n = reference.integers("input/data/size");
        for (int i = 0; i < n.length; i++) {
            double target = reference.number("expected/p0");
            ReferenceFile.assertClose(
                    reference.numbers("expected/z")[i], FunnelLimits.z(x[i], n[i], target), 1e-6, "z");
            ReferenceFile.assertClose(
                    reference.numbers("expected/p_two_sided_binom")[i],
                    BinomialTest.twoSided(x[i], n[i], target),
                    1e-6,
                    "p");
        }
    }

    // The printed binomial table for n = 20, p = 0.10 (Rosner, Fundamentals of Biostatistics, appendix table 1, from
    // memory; no worked
    // funnel was found in searching):
    // .1216 .2702 .2852 .1901 .0898 .0319, so P(X <= 5) = .9888 is the first at .975 or more.
    @Test
    void theLimitsFollowFromAPrintedBinomialTable() {
        FunnelLimits plain = FunnelLimits.of(20, 0.1, 0.95, EXACT_BINOMIAL_QUANTILE);
        assertEquals(0, plain.low());
        assertEquals(5.0 / 20, plain.high());
        FunnelLimits smooth = FunnelLimits.of(20, 0.1, 0.95, EXACT_BINOMIAL_INTERPOLATED);
        assertEquals(0, smooth.low());
        assertEquals((5 - (0.9888 - 0.975) / 0.0319) / 20, smooth.high(), 0.0003);
    }

    @Test
    void theInterpolationLiesWithinOneCountOfTheQuantile() {
        for (int n = 1; n < 200; n++) {
            double plain = FunnelLimits.limit(n, 0.2, 0.975, EXACT_BINOMIAL_QUANTILE);
            double smooth = FunnelLimits.limit(n, 0.2, 0.975, EXACT_BINOMIAL_INTERPOLATED);
            assertTrue(smooth <= plain && smooth > plain - 1.0 / n, "n = " + n);
        }
    }

    @Test
    void beyondThePlainLimitsLiesAtMostTheTail() {
        for (int n = 1; n < 120; n++) {
            BinomialDistribution binomial = BinomialDistribution.of(n, 0.15);
            FunnelLimits limits = FunnelLimits.of(n, 0.15, 0.95, EXACT_BINOMIAL_QUANTILE);
            assertTrue(binomial.survivalProbability((int) Math.round(limits.high() * n)) <= 0.025);
            assertTrue(binomial.cumulativeProbability((int) Math.round(limits.low() * n) - 1) < 0.025);
        }
    }

    @ParameterizedTest
    @EnumSource
    void widerProbabilitiesHoldNarrowerOnes(FunnelLimits.Method method) {
        for (int n = 1; n < 150; n++) {
            FunnelLimits narrow = FunnelLimits.of(n, 0.2, 0.95, method);
            FunnelLimits wide = FunnelLimits.of(n, 0.2, 0.998, method);
            assertTrue(wide.low() <= narrow.low() && narrow.high() <= wide.high(), "n = " + n);
            assertTrue(wide.low() >= 0 && wide.high() <= 1);
        }
    }

    @Test
    void impossibleInputIsRefused() {
        assertThrows(CannotEstimate.class, () -> FunnelLimits.of(0, 0.1, 0.95, EXACT_BINOMIAL_QUANTILE));
        assertThrows(CannotEstimate.class, () -> FunnelLimits.of(5, 0, 0.95, EXACT_BINOMIAL_QUANTILE));
        assertThrows(CannotEstimate.class, () -> FunnelLimits.of(5, 0.1, 1, EXACT_BINOMIAL_QUANTILE));
        assertThrows(CannotEstimate.class, () -> FunnelLimits.z(1, 5, Double.NaN));
        assertEquals(
                "The funnel's limits cannot be estimated because the target, 1.0, is not between 0 and 1.",
                assertThrows(CannotEstimate.class, () -> FunnelLimits.z(1, 5, 1))
                        .getMessage());
    }
}
