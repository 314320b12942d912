package wisp.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class MoverTest {

    // R 4.2.2: Newcombe's method 10 written out from two prop.test(correct = FALSE) intervals.
    @Test
    void theDifferenceOfTwoWilsonIntervalsIsNewcombesMethodTen() {
        ReferenceFile reference = ReferenceFile.read("newcombe-difference");
        int[] x1 = reference.integers("input/data/x1");
        int[] n1 = reference.integers("input/data/n1");
        int[] x2 = reference.integers("input/data/x2");
        int[] n2 = reference.integers("input/data/n2");
        for (int i = 0; i < x1.length; i++) {
            Interval difference =
                    Mover.difference(WilsonInterval.of(x1[i], n1[i], 0.95), WilsonInterval.of(x2[i], n2[i], 0.95));
            ReferenceFile.assertClose(reference.numbers("expected/difference")[i], difference.value(), 1e-6, "value");
            ReferenceFile.assertClose(reference.numbers("expected/lower")[i], difference.low(), 1e-6, "low");
            ReferenceFile.assertClose(reference.numbers("expected/upper")[i], difference.high(), 1e-6, "high");
        }
    }

    /** Fieller 1954: of two normal estimates, the limits R of the ratio solve (a - R b)² = ha² + R² hb². */
    @Test
    void theRatioOfTwoSymmetricIntervalsIsFiellers() {
        Interval ratio = Mover.ratio(interval(10, 8, 12), interval(5, 4, 6));
        // (10 - 5 R)² = 4 + R², that is 24 R² - 100 R + 96 = 0
        assertEquals(2, ratio.value());
        assertEquals((100 - Math.sqrt(100 * 100 - 4 * 24 * 96)) / 48, ratio.low(), 1e-12);
        assertEquals((100 + Math.sqrt(100 * 100 - 4 * 24 * 96)) / 48, ratio.high(), 1e-12);
    }

    /** How Donner and Zou 2012 derive them: a limit R of a / b is where that limit of the difference a - R b is 0. */
    @Test
    void aLimitOfTheRatioIsWhereThatOfTheDifferenceIsNought() {
        long seed = 20264;
        Random random = new Random(seed);
        for (int i = 0; i < 500; i++) {
            Interval a = WilsonInterval.of(1 + random.nextInt(30), 30 + random.nextInt(100), 0.95);
            Interval b = WilsonInterval.of(1 + random.nextInt(30), 30 + random.nextInt(100), 0.95);
            Interval ratio = Mover.ratio(a, b);
            String which = "seed " + seed + ", round " + i;
            assertEquals(0, Mover.difference(a, times(b, ratio.low())).low(), 1e-9, which);
            assertEquals(0, Mover.difference(a, times(b, ratio.high())).high(), 1e-9, which);
        }
    }

    /** Zou, Huang and Zhang 2009: the sum of all with weights 1 and -1 is the difference; a scaled one scales. */
    @Test
    void theWeightedSumHoldsTheDifferenceAndItsScale() {
        Interval a = WilsonInterval.of(7, 30, 0.95);
        Interval b = WilsonInterval.of(19, 44, 0.95);
        Interval difference = Mover.difference(a, b);
        Interval sum = Mover.sum(new double[] {3, -3}, List.of(a, b));
        assertEquals(3 * difference.value(), sum.value(), 1e-12);
        assertEquals(3 * difference.low(), sum.low(), 1e-12);
        assertEquals(3 * difference.high(), sum.high(), 1e-12);
    }

    /** Of symmetric intervals the sum is the normal one: 0.2 · 10 + 0.8 · 5 with halves 2 and 1. */
    @Test
    void theWeightedSumOfSymmetricIntervalsAddsTheSquares() {
        Interval sum = Mover.sum(new double[] {0.2, 0.8}, List.of(interval(10, 8, 12), interval(5, 4, 6)));
        assertEquals(6, sum.value(), 1e-12);
        assertEquals(6 - Math.sqrt(0.16 + 0.64), sum.low(), 1e-12);
        assertEquals(6 + Math.sqrt(0.16 + 0.64), sum.high(), 1e-12);
    }

    @Test
    void aWeightThatIsNoNumberIsRefused() {
        Interval some = WilsonInterval.of(5, 20, 0.95);
        assertEquals(
                "The weighted sum cannot be estimated because weight 1, NaN, is not a finite number.",
                assertThrows(CannotEstimate.class, () -> Mover.sum(new double[] {Double.NaN}, List.of(some)))
                        .getMessage());
        assertThrows(CannotEstimate.class, () -> Mover.sum(new double[] {1, 2}, List.of(some)));
        assertThrows(CannotEstimate.class, () -> Mover.sum(new double[] {}, List.of()));
    }

    @Test
    void nothingOverSomethingReachesFromNought() {
        Interval ratio = Mover.ratio(WilsonInterval.of(0, 20, 0.95), WilsonInterval.of(5, 20, 0.95));
        assertEquals(0, ratio.value());
        assertEquals(0, ratio.low());
    }

    @Test
    void aDenominatorThatMayBeNoughtBoundsNothing() {
        Interval ratio = Mover.ratio(interval(0.5, 0.3, 0.7), interval(0.1, 0, 0.3));
        assertEquals(Double.POSITIVE_INFINITY, ratio.high());
    }

    @Test
    void aRatioOverNothingCannotBeEstimated() {
        Interval some = WilsonInterval.of(5, 20, 0.95);
        Interval none = WilsonInterval.of(0, 20, 0.95);
        CannotEstimate why = assertThrows(CannotEstimate.class, () -> Mover.ratio(some, none));
        assertEquals("The ratio cannot be estimated because the second quantity is 0.", why.getMessage());
    }

    @Test
    void intervalsOfDifferentLevelsAreNotCompared() {
        Interval wide = WilsonInterval.of(5, 20, 0.99);
        Interval usual = WilsonInterval.of(5, 20, 0.95);
        assertThrows(CannotEstimate.class, () -> Mover.difference(wide, usual));
    }

    @Test
    void theWeightsOneAndMinusOneMakeTheDifference() {
        Interval a = WilsonInterval.of(5, 20, 0.95);
        Interval b = WilsonInterval.of(9, 30, 0.95);
        assertEquals(Mover.difference(a, b), Mover.sum(new double[] {1, -1}, List.of(a, b)));
        assertThrows(CannotEstimate.class, () -> Mover.sum(new double[0], List.of()));
        assertThrows(CannotEstimate.class, () -> Mover.sum(new double[] {1}, List.of(a, b)));
    }

    // R 4.2.2, epitools: ageadjust.direct(count, pop, stdpop = stdpop)$adj.rate, Down syndrome, Selvin 2004
    @Test
    void theSumWeightedByAStandardIsTheDirectlyStandardisedRate() {
        ReferenceFile reference = ReferenceFile.read("direct-standardisation");
        int[] count = reference.integers("input/count");
        double[] pop = reference.numbers("input/pop");
        double[] standard = reference.numbers("input/stdpop");
        double all = Arrays.stream(standard).sum();
        double[] weights = Arrays.stream(standard).map(size -> size / all).toArray();
        List<Interval> rates = new ArrayList<>();
        for (int i = 0; i < count.length; i++) {
            rates.add(GarwoodInterval.of(count[i], pop[i], 0.95));
        }
        double expected = reference.number("expected/adj.rate");
        Interval sum = Mover.sum(weights, rates);
        assertEquals(expected, sum.value(), 1e-15);
        // the gamma interval of Fay and Feuer, 0.000644 to 0.000805, is another method: near, not equal
        assertEquals(0.00064391845004319861, sum.low(), 2e-5);
        assertEquals(0.00080534321141844918, sum.high(), 2e-5);
    }

    private static Interval interval(double value, double low, double high) {
        return new Interval(value, low, high, 0.95, "made up");
    }

    private static Interval times(Interval b, double factor) {
        return interval(b.value() * factor, b.low() * factor, b.high() * factor);
    }
}
