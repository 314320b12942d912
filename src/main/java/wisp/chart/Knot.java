package wisp.chart;

import java.util.OptionalDouble;

/**
 * One place that a curve or step curve passes through, with its confidence limits.
 *
 * @param x place along the x axis; knots of a curve go upwards in x
 * @param y height of the curve; of a step curve: from x on, up to the next knot
 * @param low lower edge of the band; empty where unknown, then the band pauses
 * @param high upper edge of the band; empty where unknown
 */
public record Knot(double x, double y, OptionalDouble low, OptionalDouble high) {

    public Knot {
        Words.finite(x, "x of a curve");
        Words.finite(y, "y of a curve at x = " + x);
        low.ifPresent(v -> Words.finite(v, "the lower limit of a curve at x = " + x));
        high.ifPresent(v -> Words.finite(v, "the upper limit of a curve at x = " + x));
    }

    /** A knot without a band. */
    public static Knot at(double x, double y) {
        return new Knot(x, y, OptionalDouble.empty(), OptionalDouble.empty());
    }

    /** The same knot with its limits. */
    public Knot between(double newLow, double newHigh) {
        return new Knot(x, y, OptionalDouble.of(newLow), OptionalDouble.of(newHigh));
    }

    /** Whether both limits are known. */
    public boolean hasBand() {
        return low.isPresent() && high.isPresent();
    }
}
