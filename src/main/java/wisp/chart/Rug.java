package wisp.chart;

import java.util.List;
import java.util.Objects;

/**
 * A short stroke at the edge for every single observation.
 *
 * @param name what the strokes stand for, for the key; may be empty
 * @param ink the part that they play
 * @param along the axis on which the places are read: X for strokes at the bottom, Y for strokes at the left
 * @param places where the strokes stand
 */
public record Rug(String name, Ink ink, Along along, List<Double> places) implements Layer {

    public Rug {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(ink, "ink");
        Objects.requireNonNull(along, "along");
        places = List.copyOf(places);
        places.forEach(place -> Words.finite(place, "a stroke of '" + name + "'"));
    }

    @Override
    public <R> R read(Reader<R> reader) {
        return reader.rug(this);
    }
}
