package wisp.chart;

import java.util.List;
import java.util.Objects;

/**
 * Bars from zero to each mark, with a whisker where the interval is known.
 *
 * @param name what the bars stand for, for the key; may be empty
 * @param ink the part that they play
 * @param along the axis along which the bars grow
 * @param width how wide each is, in units of the other axis: 7 for weeks in days, about 0.8 for categories
 * @param marks the ends of the bars; a bar is centred on its mark
 */
public record Bars(String name, Ink ink, Along along, double width, List<Mark> marks) implements Layer {

    public Bars {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(ink, "ink");
        Objects.requireNonNull(along, "along");
        if (!(Words.finite(width, "the bar width of '" + name + "'") > 0)) {
            throw new IllegalArgumentException(
                    "The bars '" + name + "' are " + width + " wide: give a width above zero.");
        }
        marks = List.copyOf(marks);
    }

    @Override
    public <R> R read(Reader<R> reader) {
        return reader.bars(this);
    }
}
