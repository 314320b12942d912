package wisp.chart;

import java.util.List;
import java.util.Objects;

/**
 * Dots, each with a whisker where its interval is known.
 *
 * <p>Two layers that have marks in the same category are drawn side by side, the first one first.
 *
 * @param name what the dots stand for, for the key; may be empty
 * @param ink the part that they play
 * @param along the axis along which the intervals run
 * @param marks the dots
 * @param named whether the captions are the dots' names, each of which must be read: where they have no room beside the
 *     dots, the dots are numbered, and the names follow under the picture's axis
 */
public record Points(String name, Ink ink, Along along, List<Mark> marks, boolean named) implements Layer {

    /** Dots whose captions, if any, are no names. */
    public Points(String name, Ink ink, Along along, List<Mark> marks) {
        this(name, ink, along, marks, false);
    }

    /** Dots that carry their names. */
    public static Points named(String name, Ink ink, Along along, List<Mark> marks) {
        return new Points(name, ink, along, marks, true);
    }

    public Points {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(ink, "ink");
        Objects.requireNonNull(along, "along");
        marks = List.copyOf(marks);
    }

    @Override
    public <R> R read(Reader<R> reader) {
        return reader.points(this);
    }
}
