package wisp.chart;

import java.util.List;
import java.util.Objects;

/**
 * A limit that changes along the x axis, such as the limits of a funnel or of a p-chart.
 *
 * @param name what the limit is, for the key; may be empty, as for the lower one of a pair
 * @param ink the part that it plays
 * @param stepped whether it holds its height from each knot to the next (p-chart) or runs straight between them
 *     (funnel)
 * @param knots the places that it passes through, upwards in x
 */
public record LimitCurve(String name, Ink ink, boolean stepped, List<Knot> knots) implements Layer {

    public LimitCurve {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(ink, "ink");
        knots = Layer.upwards(knots, name);
    }

    @Override
    public <R> R read(Reader<R> reader) {
        return reader.limitCurve(this);
    }
}
