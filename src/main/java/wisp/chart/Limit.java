package wisp.chart;

import java.util.Objects;

/**
 * A straight reference line across the picture, such as a target or "no difference", with its label beside it.
 *
 * @param name the words written at the line
 * @param ink the part that it plays
 * @param along the axis on which the value is read: Y for a level line, X for an upright one
 * @param value where the line stands
 */
public record Limit(String name, Ink ink, Along along, double value) implements Layer {

    public Limit {
        Words.require(name, "a limit at " + value);
        Objects.requireNonNull(ink, "ink");
        Objects.requireNonNull(along, "along");
        Words.finite(value, "the limit '" + name + "'");
    }

    @Override
    public <R> R read(Reader<R> reader) {
        return reader.limit(this);
    }
}
