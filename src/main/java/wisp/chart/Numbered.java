package wisp.chart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;

/**
 * A picture whose named dots carry numbers, left to right, because their names have no room beside them.
 *
 * @param picture with numbers for captions
 * @param names each number with its name, to stand under the axis
 */
record Numbered(Picture picture, List<String> names) {

    /**
     * Numbers the named dots of a picture, left to right and from below.
     *
     * @param alarming whether those that stand out are numbered too, and do not keep their names
     */
    static Numbered of(Picture picture, boolean alarming) {
        Predicate<Layer> numbers = layer -> named(layer) && (alarming || layer.ink() != Ink.ALARM);
        List<Mark> inOrder = picture.layers().stream()
                .filter(numbers)
                .flatMap(layer -> layer.marks().stream())
                .filter(mark -> !mark.caption().isEmpty())
                .sorted(Comparator.comparingDouble(Mark::x).thenComparingDouble(Mark::y))
                .toList();
        List<String> names = new ArrayList<>();
        for (Mark mark : inOrder) {
            names.add((names.size() + 1) + "\u00a0" + mark.caption());
        }
        List<Layer> layers = picture.layers().stream()
                .map(layer -> numbers.test(layer) ? numbered((Points) layer, inOrder) : layer)
                .toList();
        return new Numbered(
                new Picture(picture.id(), picture.title(), picture.alternative(), picture.x(), picture.y(), layers),
                names);
    }

    /** Whether the layer is of dots that carry their names. */
    static boolean named(Layer layer) {
        return layer instanceof Points points && points.named();
    }

    private static Points numbered(Points points, List<Mark> inOrder) {
        return Points.named(
                points.name(),
                points.ink(),
                points.along(),
                points.marks().stream()
                        .map(mark -> mark.caption().isEmpty() ? mark : mark.captioned("" + (place(mark, inOrder) + 1)))
                        .toList());
    }

    private static int place(Mark mark, List<Mark> inOrder) {
        for (int i = 0; i < inOrder.size(); i++) {
            if (inOrder.get(i) == mark) {
                return i;
            }
        }
        throw new IllegalStateException("the dot '" + mark.label() + "' was not numbered");
    }
}
