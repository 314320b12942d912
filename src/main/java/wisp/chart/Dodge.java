package wisp.chart;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * How far layers that have marks in the same category step aside for each other.
 *
 * @param beside the layers that stand side by side, in order
 */
record Dodge(List<Layer> beside) {

    private static final double SHARE_OF_CATEGORY = 0.8;

    static Dodge of(Picture picture) {
        if (!picture.x().isCategories() && !picture.y().isCategories()) {
            return new Dodge(List.of());
        }
        Along axis = picture.x().isCategories() ? Along.X : Along.Y;
        List<Layer> marked = picture.layers().stream()
                .filter(layer -> !layer.marks().isEmpty())
                .toList();
        return new Dodge(marked.stream()
                .filter(layer -> marked.stream().anyMatch(other -> other != layer && meet(layer, other, axis)))
                .toList());
    }

    private static boolean meet(Layer one, Layer other, Along axis) {
        Set<Long> shared = new HashSet<>(places(one, axis));
        shared.retainAll(places(other, axis));
        return !shared.isEmpty();
    }

    private static Set<Long> places(Layer layer, Along axis) {
        Set<Long> places = new HashSet<>();
        layer.marks().forEach(mark -> places.add(Math.round(axis == Along.X ? mark.x() : mark.y())));
        return places;
    }

    /** How many stand side by side; 1 where none has to step aside. */
    int abreast() {
        return Math.max(1, beside.size());
    }

    /** From one to the next, in categories. */
    double step() {
        return SHARE_OF_CATEGORY / abreast();
    }

    /** How far this layer steps aside, in categories. */
    double shift(Layer layer) {
        for (int i = 0; i < beside.size(); i++) {
            if (beside.get(i) == layer) {
                return (i - (beside.size() - 1) / 2.0) * step();
            }
        }
        return 0;
    }

    /** The share of its full width that is left to a bar. */
    double narrowing(Layer layer) {
        return beside.stream().anyMatch(other -> other == layer) ? step() : 1;
    }
}
