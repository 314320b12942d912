package wisp.chart;

import java.util.ArrayList;
import java.util.List;
import wisp.chart.Lettering.Anchor;
import wisp.chart.Lettering.Role;

/** Words inside the plot: captions beside dots and the names of level limits, kept from running into each other. */
final class Captions {

    private static final double GAP = 8;
    private final Layout layout;
    private final List<Box> taken = new ArrayList<>();

    private Captions(Layout layout) {
        this.layout = layout;
    }

    static void write(Layout layout) {
        Captions captions = new Captions(layout);
        captions.avoidDots();
        captions.limits();
        captions.captions();
    }

    static void writeLevelLimits(Layout layout) {
        new Captions(layout).limits();
    }

    private void avoidDots() {
        for (Layer layer : layout.picture().layers()) {
            layer.marks()
                    .forEach(mark -> taken.add(Box.around(layout.markX(layer, mark), layout.markY(layer, mark), 5)));
        }
    }

    private void limits() {
        for (Layer layer : layout.picture().layers()) {
            if (layer instanceof Limit limit && limit.along() == Along.Y) {
                double line = layout.y().at(limit.value());
                double right = layout.plot().right();
                double left = layout.plot().left() + 4;
                set(List.of(
                        words(right, line - 5, Anchor.END, Role.LIMIT, limit.name()),
                        words(left, line - 5, Anchor.START, Role.LIMIT, limit.name()),
                        words(right, line + 14, Anchor.END, Role.LIMIT, limit.name()),
                        words(left, line + 14, Anchor.START, Role.LIMIT, limit.name())));
            }
        }
    }

    private void captions() {
        for (Layer layer : layout.picture().layers()) {
            for (Mark mark : layer.marks()) {
                if (!mark.caption().isEmpty()) {
                    double x = layout.markX(layer, mark);
                    double y = layout.markY(layer, mark);
                    set(List.of(
                            words(x + GAP, y + 4.5, Anchor.START, Role.CAPTION, mark.caption()),
                            words(x - GAP, y + 4.5, Anchor.END, Role.CAPTION, mark.caption()),
                            words(x, y - GAP, Anchor.MIDDLE, Role.CAPTION, mark.caption()),
                            words(x, y + GAP + 10, Anchor.MIDDLE, Role.CAPTION, mark.caption())));
                }
            }
        }
    }

    private static Lettering words(double x, double y, Anchor anchor, Role role, String text) {
        return Lettering.of(x, y, anchor, role, text);
    }

    private void set(List<Lettering> choices) {
        Lettering best = choices.stream()
                .filter(this::isFree)
                .findFirst()
                .orElseGet(() ->
                        choices.stream().filter(this::isInside).findFirst().orElse(choices.get(0)));
        layout.words().add(best);
        taken.add(best.box());
    }

    private boolean isInside(Lettering words) {
        Box box = words.box();
        return box.left() >= 0
                && box.right() <= layout.width()
                && box.top() >= layout.plot().top() - 3
                && box.bottom() <= layout.plot().bottom();
    }

    private boolean isFree(Lettering words) {
        return isInside(words) && taken.stream().noneMatch(words.box()::meets);
    }
}
