package wisp.chart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;

/**
 * A picture of which some named dots carry numbers, left to right, because their names have no room around them.
 *
 * @param picture with numbers for captions
 * @param names each number with its name, to stand under the axis
 */
record Numbered(Picture picture, List<String> names) {

    /**
     * Numbers some of the named dots of a picture, left to right and from below.
     *
     * @param crowded those that get numbers, the very marks; the others keep their names
     */
    static Numbered of(Picture picture, Set<Mark> crowded) {
        List<Mark> inOrder = picture.layers().stream()
                .filter(Numbered::named)
                .flatMap(layer -> layer.marks().stream())
                .filter(crowded::contains)
                .sorted(Comparator.comparingDouble(Mark::x).thenComparingDouble(Mark::y))
                .toList();
        List<String> names = new ArrayList<>();
        for (Mark mark : inOrder) {
            names.add((names.size() + 1) + "\u00a0" + mark.caption());
        }
        List<Layer> layers = picture.layers().stream()
                .map(layer -> named(layer) ? numbered((Points) layer, inOrder) : layer)
                .toList();
        return new Numbered(
                new Picture(picture.id(), picture.title(), picture.alternative(), picture.x(), picture.y(), layers),
                names);
    }

    /** Whether the layer is of dots that carry their names. */
    static boolean named(Layer layer) {
        return layer instanceof Points points && points.named();
    }

    /** Whether a number of few digits stands for the dot's name. */
    static boolean isNumber(Mark mark) {
        return mark.caption().matches("\\d{1,3}");
    }

    private static Points numbered(Points points, List<Mark> inOrder) {
        return Points.named(
                points.name(),
                points.ink(),
                points.along(),
                points.marks().stream().map(mark -> numbered(mark, inOrder)).toList());
    }

    private static Mark numbered(Mark mark, List<Mark> inOrder) {
        for (int i = 0; i < inOrder.size(); i++) {
            if (inOrder.get(i) == mark) {
                return mark.captioned(String.valueOf(i + 1));
            }
        }
        return mark;
    }
}
