package wisp.chart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import wisp.chart.Lettering.Anchor;
import wisp.chart.Lettering.Role;

/** Words inside the plot: captions beside dots and the names of level limits, kept from running into each other. */
final class Captions {

    private static final double GAP = 8;
    private final Layout layout;
    private final List<Box> taken = new ArrayList<>();
    private final List<Box> marks = new ArrayList<>();
    private int crowded;

    private Captions(Layout layout) {
        this.layout = layout;
    }

    /** Writes them, and says how many dots' names had to cover another word, a dot or the paper's edge. */
    static int write(Layout layout) {
        Captions captions = new Captions(layout);
        captions.avoidDots();
        captions.avoidCurves();
        captions.avoidLimits();
        captions.limits();
        captions.captions();
        return captions.crowded;
    }

    static void writeLevelLimits(Layout layout) {
        new Captions(layout).limits();
    }

    private void avoidDots() {
        for (Layer layer : layout.picture().layers()) {
            for (Mark mark : layer.marks()) {
                Box dot = Box.around(layout.markX(layer, mark), layout.markY(layer, mark), 5);
                marks.add(layer instanceof Bars bars ? layout.bar(bars, mark) : dot);
            }
        }
    }

    private void avoidCurves() {
        for (Layer layer : layout.picture().layers()) {
            List<Knot> knots = Outline.knots(layer);
            List<Outline.Corner> corners = Outline.line(knots, !(layer instanceof Curve));
            for (int i = 1; i < corners.size(); i++) {
                avoid(corners.get(i - 1), corners.get(i));
            }
        }
    }

    private void avoid(Outline.Corner from, Outline.Corner to) {
        Ruler x = layout.x();
        Ruler y = layout.y();
        double startX = x.cut(from.x());
        double startY = y.cut(from.y());
        double acrossX = x.cut(to.x()) - startX;
        double acrossY = y.cut(to.y()) - startY;
        int pieces = (int) Math.ceil(Math.hypot(acrossX, acrossY) / 6);
        for (int i = 0; i <= pieces; i++) {
            double share = pieces == 0 ? 0 : (double) i / pieces;
            taken.add(Box.around(startX + share * acrossX, startY + share * acrossY, 2));
        }
    }

    private void avoidLimits() {
        Box plot = layout.plot();
        for (Layer layer : layout.picture().layers()) {
            if (layer instanceof Limit limit && limit.along() == Along.Y) {
                double line = layout.y().at(limit.value());
                taken.add(new Box(plot.left(), line - 1, plot.right(), line + 1));
            }
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
                    Lettering name = set(List.of(
                            words(x + GAP, y + 4.5, Anchor.START, Role.CAPTION, mark.caption()),
                            words(x - GAP, y + 4.5, Anchor.END, Role.CAPTION, mark.caption()),
                            words(x, y - GAP - 1, Anchor.MIDDLE, Role.CAPTION, mark.caption()),
                            words(x, y + GAP + 10, Anchor.MIDDLE, Role.CAPTION, mark.caption()),
                            words(x + 4, y - GAP - 1, Anchor.START, Role.CAPTION, mark.caption()),
                            words(x + 4, y + GAP + 10, Anchor.START, Role.CAPTION, mark.caption()),
                            words(x - 4, y - GAP - 1, Anchor.END, Role.CAPTION, mark.caption()),
                            words(x - 4, y + GAP + 10, Anchor.END, Role.CAPTION, mark.caption())));
                    crowded += Numbered.named(layer) && !free(name) ? 1 : 0;
                }
            }
        }
    }

    private static Lettering words(double x, double y, Anchor anchor, Role role, String text) {
        return Lettering.of(x, y, anchor, role, text);
    }

    private Lettering set(List<Lettering> choices) {
        Lettering best =
                choices.stream().min(Comparator.comparingDouble(this::covered)).orElseThrow();
        layout.words().add(best);
        return best;
    }

    /** How much of what is already there the words would cover, and how far they would stick out; 0 is free. */
    private double covered(Lettering words) {
        Box box = words.box();
        double solid = Stream.concat(marks.stream(), written())
                .mapToDouble(box::shared)
                .sum();
        return out(box) * 1000
                + 20 * solid
                + taken.stream().mapToDouble(box::shared).sum();
    }

    /** Whether the words cover no other words and no dot, and lie inside; lines may run behind them. */
    private boolean free(Lettering words) {
        Box box = words.box();
        return out(box) == 0
                && marks.stream().noneMatch(box::meets)
                && layout.words().stream()
                        .noneMatch(other -> other != words && other.box().meets(box));
    }

    private Stream<Box> written() {
        return layout.words().stream().map(Lettering::box);
    }

    private double out(Box box) {
        Box plot = layout.plot();
        return Math.max(0, -box.left())
                + Math.max(0, box.right() - layout.width())
                + Math.max(0, plot.top() - 3 - box.top())
                + Math.max(0, box.bottom() - plot.bottom());
    }
}
