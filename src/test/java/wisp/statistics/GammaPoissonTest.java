package wisp.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.apache.commons.math3.special.Gamma;
import org.junit.jupiter.api.Test;

class GammaPoissonTest {

    private static final ReferenceFile CBPP = ReferenceFile.read("gamma-poisson-eb");

    // R 4.2.2: optim over dnbinom, qgamma.
    @Test
    void theFitOfTheFifteenHerdsIsThatOfR() {
        GammaPoisson fit = cbpp();
        ReferenceFile.assertClose(CBPP.number("expected/shape"), fit.shape(), 1e-6, "shape");
        ReferenceFile.assertClose(CBPP.number("expected/rate"), fit.rate(), 1e-6, "rate");
        ReferenceFile.assertClose(CBPP.number("expected/loglik"), fit.logLikelihood(), 1e-9, "log-likelihood");
        assertFalse(fit.boundary());
        List<Interval> shrunken = fit.shrunken(0.95);
        for (int i = 0; i < 15; i++) {
            Interval herd = shrunken.get(i);
            ReferenceFile.assertClose(CBPP.numbers("expected/shrunken")[i], herd.value(), 1e-5, "value " + i);
            ReferenceFile.assertClose(CBPP.numbers("expected/lower")[i], herd.low(), 1e-5, "low " + i);
            ReferenceFile.assertClose(CBPP.numbers("expected/upper")[i], herd.high(), 1e-5, "high " + i);
        }
    }

    // Printed values quoted from memory:
    // Bliss & Fisher 1953 Biometrics 9:176: red mites on 150 apple leaves, mean 1.14667, maximum likelihood k =
    // 1.02459.
    @Test
    void theRedMitesHaveTheirPrintedExponent() {
        int[] leaves = {70, 38, 17, 10, 9, 3, 2, 1};
        int[] mites = new int[150];
        int next = 0;
        for (int x = 0; x < leaves.length; x++) {
            Arrays.fill(mites, next, next + leaves[x], x);
            next += leaves[x];
        }
        double[] one = new double[150];
        Arrays.fill(one, 1);
        GammaPoisson fit = GammaPoisson.fit(mites, one);
        assertEquals(1.14667, fit.mean(), 0.000005);
        assertEquals(1.02459, fit.shape(), 0.00001);
    }

    @Test
    void theLogLikelihoodIsThatOfTheGammaFunctions() {
        GammaPoisson fit = cbpp();
        double sum = 0;
        for (int i = 0; i < 15; i++) {
            int x = fit.events().get(i);
            double t = fit.times().get(i);
            sum += Gamma.logGamma(fit.shape() + x)
                    - Gamma.logGamma(fit.shape())
                    - Gamma.logGamma(x + 1.0)
                    + fit.shape() * Math.log(fit.rate() / (fit.rate() + t))
                    + x * Math.log(t / (fit.rate() + t));
        }
        assertEquals(sum, fit.logLikelihood(), 1e-9);
    }

    @Test
    void lessSpreadThanChanceIsReportedAsTheBoundary() {
        GammaPoisson fit = GammaPoisson.fit(new int[] {5, 6, 5, 4}, new double[] {50, 60, 50, 40});
        assertTrue(fit.boundary());
        assertEquals(0, fit.dispersion());
        assertEquals(0.1, fit.mean(), 1e-12);
        Interval garwood = GarwoodInterval.of(20, 200, 0.95);
        for (Interval group : fit.shrunken(0.95)) {
            assertEquals(garwood.low(), group.low(), 1e-12);
            assertEquals("pooled, no spread between groups, Garwood exact", group.method());
        }
        assertEquals(List.of(0.25, 0.25, 0.25, 0.25), fit.ranks().probabilityLargest());
        assertTrue(GammaPoisson.fit(new int[] {3, 3}, new double[] {7, 7}).boundary());
    }

    @Test
    void aSlightSpreadIsFoundNearTheBoundary() {
        int[] events = {110, 90, 131, 76, 100};
        double[] times = {1000, 1000, 1000, 1000, 1000};
        GammaPoisson fit = GammaPoisson.fit(events, times);
        assertFalse(fit.boundary());
        // Method of moments, (variance - mean) / mean²: mean 101.4, variance 442.8 with divisor n - 1.
        assertEquals((442.8 * 4 / 5 - 101.4) / (101.4 * 101.4), fit.dispersion(), 0.003);
    }

    @Test
    void theUnitOfTimeOnlyScalesTheRates() {
        int[] events = CBPP.integers("input/data/incidence");
        double[] days =
                Arrays.stream(CBPP.numbers("input/data/size")).map(t -> t * 30).toArray();
        GammaPoisson inDays = GammaPoisson.fit(events, days);
        assertEquals(cbpp().shape(), inDays.shape(), 1e-6);
        assertEquals(cbpp().mean() / 30, inDays.mean(), 1e-9);
        for (int i = 0; i < 15; i++) {
            assertEquals(
                    cbpp().ranks().probabilityLargest().get(i),
                    inDays.ranks().probabilityLargest().get(i),
                    1e-8);
        }
    }

    @Test
    void theChancesAddUpToOneAndValuesLieBetweenRawAndMean() {
        Random random = new Random(20272);
        for (int draw = 0; draw < 20; draw++) {
            int[] events = random.ints(6, 0, 60).toArray();
            double[] times = random.doubles(6, 20, 300).toArray();
            GammaPoisson fit = GammaPoisson.fit(events, times);
            String what = "seed 20272, draw " + draw;
            PosteriorRanks ranks = fit.ranks();
            assertEquals(
                    1, ranks.probabilityLargest().stream().mapToDouble(p -> p).sum(), 1e-8, what);
            assertEquals(21, ranks.expectedRank().stream().mapToDouble(r -> r).sum(), 1e-8, what);
            for (int i = 0; i < 6; i++) {
                Interval group = fit.shrunken(0.9).get(i);
                double raw = events[i] / times[i];
                assertTrue(group.value() >= Math.min(raw, fit.mean()) - 1e-12, what);
                assertTrue(group.value() <= Math.max(raw, fit.mean()) + 1e-12, what);
                assertTrue(group.low() < group.value() && group.value() < group.high(), what);
            }
        }
    }

    @Test
    void bothOfTwoEqualGroupsAreAsLikelyTheLargest() {
        GammaPoisson fit = GammaPoisson.fit(new int[] {30, 2, 30, 2}, new double[] {10, 10, 10, 10});
        assertEquals(0.5, fit.ranks().probabilityLargest().get(0), 1e-6);
        assertEquals(1.5, fit.ranks().expectedRank().get(2), 1e-4);
    }

    @Test
    void uninformativeInputIsRefusedInASentence() {
        assertEquals(
                "The spread between groups cannot be estimated because there is no event in any group.",
                assertThrows(CannotEstimate.class, () -> GammaPoisson.fit(new int[] {0, 0}, new double[] {1, 2}))
                        .getMessage());
        assertThrows(CannotEstimate.class, () -> GammaPoisson.fit(new int[] {3}, new double[] {1}));
        assertThrows(CannotEstimate.class, () -> GammaPoisson.fit(new int[] {3, 1}, new double[] {1}));
        assertThrows(CannotEstimate.class, () -> GammaPoisson.fit(new int[] {3, 1}, new double[] {1, 0}));
        assertThrows(CannotEstimate.class, () -> GammaPoisson.fit(new int[] {3, -1}, new double[] {1, 4}));
        assertThrows(CannotEstimate.class, () -> cbpp().shrunken(Double.NaN));
    }

    private static GammaPoisson cbpp() {
        return GammaPoisson.fit(CBPP.integers("input/data/incidence"), CBPP.numbers("input/data/size"));
    }
}
