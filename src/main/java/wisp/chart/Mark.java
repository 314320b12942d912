package wisp.chart;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One dot or bar, with its interval and its words.
 *
 * @param x place along the x axis (a category's index, or days since 1 January 1970, where the axis is one of those)
 * @param y place along the y axis
 * @param low lower limit of the interval along the layer's axis; empty where unknown, then no whisker is drawn
 * @param high upper limit; empty where unknown
 * @param label what the mark stands for, such as "0-15 min, this season"
 * @param hover the values in words, such as "4 of 95 calves, 4.2% (1.6 to 10.3)"; may be empty
 * @param caption words drawn beside the mark, such as "4 of 95"; may be empty
 * @param link page with what is behind the mark: a path or an http(s) address
 */
public record Mark(
        double x,
        double y,
        OptionalDouble low,
        OptionalDouble high,
        String label,
        String hover,
        String caption,
        Optional<String> link) {

    public Mark {
        Words.require(label, "a mark at x = " + x + ", y = " + y);
        Words.finite(x, "x of '" + label + "'");
        Words.finite(y, "y of '" + label + "'");
        low.ifPresent(v -> Words.finite(v, "the lower limit of '" + label + "'"));
        high.ifPresent(v -> Words.finite(v, "the upper limit of '" + label + "'"));
        if (low.isPresent() && high.isPresent() && low.getAsDouble() > high.getAsDouble()) {
            throw new IllegalArgumentException("The interval of '" + label + "' runs from " + low.getAsDouble()
                    + " down to " + high.getAsDouble() + ": give the lower limit first.");
        }
        Objects.requireNonNull(hover, "hover");
        Objects.requireNonNull(caption, "caption");
        link.ifPresent(Mark::requireSafe);
    }

    /** A bare mark. */
    public static Mark at(double x, double y, String label) {
        return new Mark(x, y, OptionalDouble.empty(), OptionalDouble.empty(), label, "", "", Optional.empty());
    }

    /** The same mark with its interval. */
    public Mark between(double low, double high) {
        return between(OptionalDouble.of(low), OptionalDouble.of(high));
    }

    /** The same mark with an interval of which a limit may be unknown. */
    public Mark between(OptionalDouble newLow, OptionalDouble newHigh) {
        return new Mark(x, y, newLow, newHigh, label, hover, caption, link);
    }

    /** The same mark with its values in words. */
    public Mark saying(String values) {
        return new Mark(x, y, low, high, label, values, caption, link);
    }

    /** The same mark with words drawn beside it. */
    public Mark captioned(String words) {
        return new Mark(x, y, low, high, label, hover, words, link);
    }

    /** The same mark, opening a page. */
    public Mark to(String page) {
        return new Mark(x, y, low, high, label, hover, caption, Optional.of(page));
    }

    /** Whether both limits are known, so that a whisker can be drawn. */
    public boolean hasInterval() {
        return low.isPresent() && high.isPresent();
    }

    /** Label and values in one line. */
    public String words() {
        return hover.isEmpty() ? label : label + ": " + hover;
    }

    private static void requireSafe(String page) {
        if (!page.matches("(https?://|/(?!/)|[?#]|\\./)[^\\s]*")) {
            throw new IllegalArgumentException("A mark cannot link to '" + page
                    + "': give a path from the root such as /calves?pen=3, a query, or an http(s) address.");
        }
    }
}
