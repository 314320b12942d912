package wisp.chart;

import java.util.List;
import java.util.Objects;

/**
 * A drawing described but not yet drawn: two axes and the layers between them, painted in order, first at the back.
 *
 * @param id short name, unique on its page: small letters, digits and hyphens, starting with a letter
 * @param title what the picture is about, a few words
 * @param alternative what is seen, in a sentence or two, for whoever cannot see it
 * @param x horizontal axis
 * @param y vertical axis
 * @param layers what is drawn; may be empty, then the axes stand alone with "No data"
 */
public record Picture(String id, String title, String alternative, Axis x, Axis y, List<Layer> layers) {

    public Picture {
        if (!id.matches("[a-z][a-z0-9-]*")) {
            throw new IllegalArgumentException("The picture's id '" + id
                    + "' cannot be used in a page: take small letters, digits and hyphens, starting with a letter.");
        }
        Words.require(title, "the title of the picture '" + id + "'");
        Words.require(alternative, "the text alternative of the picture '" + id + "'");
        Objects.requireNonNull(x, "x axis");
        Objects.requireNonNull(y, "y axis");
        layers = List.copyOf(layers);
        if (x.isCategories() && y.isCategories()) {
            throw new IllegalArgumentException(
                    "The picture '" + id + "' has categories on both axes: give one of them a scale of numbers.");
        }
    }

    /** A picture of the layers, back to front. */
    public static Picture of(String id, String title, String alternative, Axis x, Axis y, Layer... layers) {
        return new Picture(id, title, alternative, x, y, List.of(layers));
    }

    /** Whether any mark opens a page. */
    public boolean hasLinks() {
        return layers.stream()
                .flatMap(layer -> layer.marks().stream())
                .anyMatch(mark -> mark.link().isPresent());
    }

    /** Whether there is nothing to see but axes, limits and empty layers. */
    boolean isEmpty() {
        return layers.stream()
                .allMatch(layer -> layer.marks().isEmpty()
                        && (layer instanceof LimitCurve || Outline.knots(layer).isEmpty())
                        && !(layer instanceof Rug rug && !rug.places().isEmpty()));
    }

    Picture over(Axis newX, Axis newY) {
        return new Picture(id, title, alternative, newX, newY, layers);
    }
}
