package wisp.statistics;

import java.util.List;

/**
 * The method of variance estimates recovery (MOVER): limits for the difference or the ratio of two independent
 * quantities from each one's own limits, whatever method those came from.
 *
 * <p>Difference: Zou and Donner 2008 (Stat Med 27:1693), equations (3) and (4); with Wilson limits it is Newcombe's
 * method 10. Ratio: Donner and Zou 2012 (Stat Methods Med Res 21:347), equation (9); an upper limit that nothing bounds
 * is positive infinity.
 */
public final class Mover {
    /** The method's name in {@link Interval#method()}. */
    public static final String METHOD = "MOVER";

    private Mover() {}

    /**
     * The first minus the second.
     *
     * @throws CannotEstimate where a limit is not finite or the levels differ
     */
    public static Interval difference(Interval first, Interval second) {
        require(first, second);
        double value = first.value() - second.value();
        double low = value - Math.hypot(first.value() - first.low(), second.high() - second.value());
        double high = value + Math.hypot(first.high() - first.value(), second.value() - second.low());
        return new Interval(value, low, high, first.level(), METHOD);
    }

    /**
     * The weighted sum of independent quantities, such as a share standardised over strata: Zou, Huang and Zhang 2009
     * (Comput Stat Data Anal 53:1080), the difference above being the weights 1 and -1.
     *
     * <pre>Σ cᵢvᵢ - √(Σ (cᵢ(vᵢ - lᵢ))²),  Σ cᵢvᵢ + √(Σ (cᵢ(uᵢ - vᵢ))²)</pre>
     *
     * <p>where l and u change places if cᵢ is negative.
     *
     * @throws CannotEstimate where there is nothing to sum, the lengths or the levels differ, or a weight or a limit
     *     is not finite
     */
    public static Interval sum(double[] weights, List<Interval> parts) {
        Require.sameLength("The weighted sum", weights.length, parts.size());
        double value = 0;
        double below = 0;
        double above = 0;
        for (int i = 0; i < weights.length; i++) {
            Interval part = parts.get(i);
            require(parts.get(0), part);
            Require.finite("The weighted sum", "weight " + (i + 1), weights[i]);
            value += weights[i] * part.value();
            double down = weights[i] * (part.value() - part.low());
            double up = weights[i] * (part.high() - part.value());
            below = Math.hypot(below, weights[i] < 0 ? up : down);
            above = Math.hypot(above, weights[i] < 0 ? down : up);
        }
        return new Interval(value, value - below, value + above, parts.get(0).level(), METHOD);
    }

    /**
     * The first over the second, both not negative.
     *
     * @throws CannotEstimate where a limit is not finite, the levels differ, a limit is negative or the second is 0
     */
    public static Interval ratio(Interval first, Interval second) {
        require(first, second);
        if (first.low() < 0 || second.low() < 0) {
            throw new CannotEstimate("The ratio", "a limit is negative");
        }
        if (second.value() == 0) {
            throw new CannotEstimate("The ratio", "the second quantity is 0");
        }
        double product = first.value() * second.value();
        double lowPart = first.low() * (2 * first.value() - first.low());
        double highPart = first.high() * (2 * first.value() - first.high());
        double lowDivisor = second.high() * (2 * second.value() - second.high());
        double highDivisor = second.low() * (2 * second.value() - second.low());
        // (ab - root) / divisor written as numerator / (ab + root): it holds where the divisor is 0 or negative
        double low = product == 0 ? 0 : lowPart / (product + root(product, lowPart * lowDivisor));
        double high = highDivisor <= 0
                ? Double.POSITIVE_INFINITY
                : (product + root(product, highPart * highDivisor)) / highDivisor;
        return new Interval(first.value() / second.value(), Math.max(0, low), high, first.level(), METHOD);
    }

    private static double root(double product, double parts) {
        return Math.sqrt(Math.max(0, square(product) - parts));
    }

    private static double square(double x) {
        return x * x;
    }

    private static void require(Interval first, Interval second) {
        for (Interval one : new Interval[] {first, second}) {
            if (!Double.isFinite(one.low()) || !Double.isFinite(one.high()) || !Double.isFinite(one.value())) {
                throw new CannotEstimate("The comparison", "a limit is not finite");
            }
            Require.size("The comparison", "a limit", one.low());
            Require.size("The comparison", "a limit", one.high());
        }
        if (first.level() != second.level()) {
            throw new CannotEstimate("The comparison", "the two confidence levels differ");
        }
    }
}
