package wisp.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static wisp.statistics.Standardisation.RatioMethod.GARWOOD_EXACT;
import static wisp.statistics.Standardisation.RatioMethod.WALD_LOG;

import java.util.Arrays;
import java.util.Random;
import org.apache.commons.statistics.distribution.PoissonDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class StandardisationTest {

    // R 4.2.2, epitools 0.5.10.1: ageadjust.direct(count, pop, stdpop = stdpop)
    @Test
    void theDirectRateIsThatOfEpitools() {
        ReferenceFile reference = ReferenceFile.read("direct-standardisation");
        Interval rate = Standardisation.direct(
                reference.integers("input/count"),
                reference.numbers("input/pop"),
                reference.numbers("input/stdpop"),
                0.95);
        ReferenceFile.assertClose(reference.number("expected/adj.rate"), rate.value(), 1e-6, "value");
        ReferenceFile.assertClose(reference.number("expected/lci"), rate.low(), 1e-6, "low");
        ReferenceFile.assertClose(reference.number("expected/uci"), rate.high(), 1e-6, "high");
    }

    // R 4.2.2, epitools 0.5.10.1: ageadjust.indirect(count, pop, stdcount, stdpop)$sir
    @Test
    void theIndirectRatioIsThatOfEpitools() {
        ReferenceFile reference = ReferenceFile.read("indirect-standardisation");
        double expected = Standardisation.expected(
                reference.numbers("input/pop"),
                reference.integers("input/stdcount"),
                reference.numbers("input/stdpop"));
        ReferenceFile.assertClose(reference.number("expected/sir/exp"), expected, 1e-6, "expected");
        int observed = Arrays.stream(reference.integers("input/count")).sum();
        Interval ratio = Standardisation.ratio(observed, expected, 0.95, WALD_LOG);
        ReferenceFile.assertClose(reference.number("expected/sir/sir"), ratio.value(), 1e-6, "value");
        ReferenceFile.assertClose(reference.number("expected/sir/lci"), ratio.low(), 1e-6, "low");
        ReferenceFile.assertClose(reference.number("expected/sir/uci"), ratio.high(), 1e-6, "high");
    }

    // Garwood's printed limits of a count of 10 are 4.795 and 18.390 (see GarwoodIntervalTest); over 8 expected.
    @Test
    void theExactRatioFollowsFromThePrintedPoissonLimits() {
        Interval ratio = Standardisation.ratio(10, 8, 0.95, GARWOOD_EXACT);
        assertEquals(1.25, ratio.value());
        assertEquals(4.795 / 8, ratio.low(), 0.0005 / 8);
        assertEquals(18.390 / 8, ratio.high(), 0.0006 / 8);
    }

    // No printed interval with its data was found in searching, so that two properties of the paper are held: with a
    // single stratum the gamma interval is the exact Poisson interval.
    @Test
    void oneStratumIsGarwoodsInterval() {
        for (int events : new int[] {0, 1, 7, 120}) {
            Interval direct = Standardisation.direct(new int[] {events}, new double[] {350}, new double[] {42}, 0.95);
            Interval garwood = GarwoodInterval.of(events, 350, 0.95);
            ReferenceFile.assertClose(garwood.value(), direct.value(), 1e-12, "value");
            ReferenceFile.assertClose(garwood.low(), direct.low(), 1e-10, "low");
            ReferenceFile.assertClose(garwood.high(), direct.high(), 1e-10, "high");
        }
    }

    @Test
    void theStandardsOwnCompositionLeavesTheCrudeRate() {
        Interval rate = Standardisation.direct(
                new int[] {4, 9, 2}, new double[] {100, 300, 50}, new double[] {1000, 3000, 500}, 0.95);
        assertEquals(15.0 / 450, rate.value(), 1e-12);
    }

    @Test
    void theOrderOfStrataChangesNothingAndTheRateIsInside() {
        Random random = new Random(20271);
        for (int draw = 0; draw < 100; draw++) {
            int[] events = random.ints(4, 0, 20).toArray();
            double[] time = random.doubles(4, 50, 500).toArray();
            double[] standard = random.doubles(4, 1, 9).toArray();
            Interval there = Standardisation.direct(events, time, standard, 0.95);
            Interval back = Standardisation.direct(reversed(events), reversed(time), reversed(standard), 0.95);
            String what = "seed 20271, draw " + draw;
            assertEquals(there.low(), back.low(), 1e-10, what);
            assertEquals(there.high(), back.high(), 1e-10, what);
            assertTrue(there.low() <= there.value() && there.value() < there.high(), what);
        }
    }

    private static int[] reversed(int[] row) {
        return new int[] {row[3], row[2], row[1], row[0]};
    }

    private static double[] reversed(double[] row) {
        return new double[] {row[3], row[2], row[1], row[0]};
    }

    @ParameterizedTest
    @EnumSource
    void badExpectationsAreRefused(Standardisation.RatioMethod method) {
        assertThrows(CannotEstimate.class, () -> Standardisation.ratio(3, 0, 0.95, method));
        assertThrows(CannotEstimate.class, () -> Standardisation.ratio(3, Double.NaN, 0.95, method));
        assertThrows(CannotEstimate.class, () -> Standardisation.ratio(-3, 2, 0.95, method));
        assertThrows(CannotEstimate.class, () -> Standardisation.ratio(3, 2, 1.95, method));
    }

    @Test
    void nothingObservedBeginsAtZeroAndHasNoLogInterval() {
        assertEquals(0, Standardisation.ratio(0, 4, 0.95, GARWOOD_EXACT).low());
        assertThrows(CannotEstimate.class, () -> Standardisation.ratio(0, 4, 0.95, WALD_LOG));
    }

    @Test
    void badStrataAreRefused() {
        int[] events = {1, 2};
        double[] time = {10, 20};
        double[] standard = {1, 1};
        assertThrows(CannotEstimate.class, () -> Standardisation.direct(events, new double[] {1}, standard, 0.95));
        assertThrows(CannotEstimate.class, () -> Standardisation.direct(events, time, new double[] {0, 0}, 0.95));
        assertThrows(CannotEstimate.class, () -> Standardisation.direct(events, time, new double[] {-1, 3}, 0.95));
        assertThrows(CannotEstimate.class, () -> Standardisation.direct(events, new double[] {0, 1}, standard, 0.95));
        assertThrows(CannotEstimate.class, () -> Standardisation.direct(new int[] {}, new double[] {}, standard, 0.95));
        assertThrows(CannotEstimate.class, () -> Standardisation.direct(events, time, standard, 0));
        assertThrows(CannotEstimate.class, () -> Standardisation.expected(time, events, new double[] {0, 1}));
    }

    // Fay & Feuer 1997 made the gamma interval to keep its level whatever the weights; here two strata,
    // exactly.
    @Test
    void theDirectIntervalKeepsItsLevelInSmallStrata() {
        double[] time = {40, 10};
        double[] standard = {1, 3};
        for (double rate : new double[] {0.02, 0.05, 0.15, 0.3}) {
            PoissonDistribution first = PoissonDistribution.of(40 * rate);
            PoissonDistribution second = PoissonDistribution.of(10 * 2 * rate);
            double truth = 0.25 * rate + 0.75 * 2 * rate;
            double covered = 0;
            for (int x = 0; x < 50; x++) {
                for (int y = 0; y < 40; y++) {
                    Interval interval = Standardisation.direct(new int[] {x, y}, time, standard, 0.95);
                    if (interval.low() <= truth && truth <= interval.high()) {
                        covered += first.probability(x) * second.probability(y);
                    }
                }
            }
            assertTrue(covered >= 0.95 && covered <= 1, "coverage " + covered + " at rate " + rate);
        }
    }
}
