package wisp.chart;

import java.util.List;
import java.util.Objects;

/**
 * A curve that holds its height from each knot to the next, such as a survival curve, with a band where limits are
 * known.
 *
 * @param name what the curve stands for, for the key; may be empty
 * @param ink the part that it plays
 * @param knots where it changes, upwards in x; the last one ends it
 */
public record Steps(String name, Ink ink, List<Knot> knots) implements Layer {

    public Steps {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(ink, "ink");
        knots = Layer.upwards(knots, name);
    }

    @Override
    public <R> R read(Reader<R> reader) {
        return reader.steps(this);
    }
}
