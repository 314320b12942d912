package wisp.chart;

import java.util.List;
import java.util.Objects;

/**
 * Straight lines from knot to knot, with a band where limits are known.
 *
 * @param name what the curve stands for, for the key; may be empty
 * @param ink the part that it plays
 * @param knots the places that it passes through, upwards in x
 */
public record Curve(String name, Ink ink, List<Knot> knots) implements Layer {

    public Curve {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(ink, "ink");
        knots = Layer.upwards(knots, name);
    }

    @Override
    public <R> R read(Reader<R> reader) {
        return reader.curve(this);
    }
}
