package wisp.chart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wisp.chart.Lettering.Anchor;
import wisp.chart.Lettering.Role;

/** Words inside the plot: captions beside dots and the names of level limits, kept from running into each other. */
final class Captions {

    /** What a place away from the dot costs, in pixels of a curve that a nearer one would cover. */
    private static final double AWAY = 40;

    private static final double AMBIGUOUS = 120;
    private static final double STRUCK = 1000;
    private final Layout layout;
    private final List<Box> taken = new ArrayList<>();
    private final List<Box> marks = new ArrayList<>();
    private final List<Box> lines = new ArrayList<>();
    private final List<Mark> crowded = new ArrayList<>();

    private Captions(Layout layout) {
        this.layout = layout;
    }

    /** Writes them, and gives the dots whose names had to cover another word, a dot or the paper's edge. */
    static List<Mark> write(Layout layout) {
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

    /** Dots that stand out have their names set first, as they need them most, and numbers before other names. */
    private void captions() {
        record Dot(Layer layer, Mark mark) {}
        layout.picture().layers().stream()
                .flatMap(layer -> layer.marks().stream().map(mark -> new Dot(layer, mark)))
                .filter(dot -> !dot.mark().caption().isEmpty())
                .sorted(Comparator.comparingInt(dot -> turn(dot.layer(), dot.mark())))
                .forEach(dot -> caption(dot.layer(), dot.mark()));
    }

    private static int turn(Layer layer, Mark mark) {
        if (!Numbered.named(layer)) {
            return 0;
        }
        return layer.ink() == Ink.ALARM ? 1 : Numbered.isNumber(mark) ? 2 : 3;
    }

    private void caption(Layer layer, Mark mark) {
        double x = layout.markX(layer, mark);
        double y = layout.markY(layer, mark);
        if (Numbered.named(layer)) {
            name(mark, x, y);
        } else {
            set(NamePlaces.beside(x, y, mark.caption()));
        }
    }

    private void name(Mark mark, double x, double y) {
        List<Lettering> places = NamePlaces.around(x, y, mark.caption());
        List<Lettering> free =
                places.stream().filter(place -> free(place, x, y)).toList();
        if (free.isEmpty()) {
            crowded.add(mark);
        }
        Lettering name = (free.isEmpty() ? places : free)
                .stream()
                        .min(Comparator.comparingDouble(place -> covered(place) + strayed(place, x, y)))
                        .orElseThrow();
        layout.words().add(name);
        Leader.of(x, y, name.box()).ifPresent(line -> {
            layout.leaders().add(line);
            taken.addAll(line.boxes());
            lines.addAll(line.boxes());
        });
    }

    /** What speaks against a place away from the dot, or so near another dot that the name might be that one's. */
    private double strayed(Lettering name, double x, double y) {
        Box box = name.box();
        Optional<Leader> leader = Leader.of(x, y, box);
        if (leader.isEmpty()) {
            double crossed = lines.stream().mapToDouble(box::shared).sum();
            return 20 * crossed + (mistaken(box, x, y) ? AMBIGUOUS : 0);
        }
        return AWAY + leader.get().length() + (strikes(leader.get(), x, y) ? STRUCK : 0);
    }

    /** Whether the line from a dot runs through a word, another line or another dot. */
    private boolean strikes(Leader line, double x, double y) {
        List<Box> others = Stream.concat(Stream.concat(marks.stream(), written()), lines.stream())
                .filter(other -> !other.holds(x, y))
                .toList();
        return line.boxes().stream().anyMatch(piece -> others.stream().anyMatch(piece::meets));
    }

    private boolean mistaken(Box name, double x, double y) {
        double own = name.from(x, y);
        return marks.stream()
                .filter(other -> !other.holds(x, y))
                .anyMatch(other -> name.from(other.middleX(), other.middleY()) < own + 5);
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

    /** Whether a dot's name covers no word, no dot and no line to a name, and lies inside; curves may run behind it. */
    private boolean free(Lettering name, double x, double y) {
        Box box = name.box();
        return out(box) == 0
                && marks.stream().noneMatch(box::meets)
                && lines.stream().noneMatch(box::meets)
                && written().noneMatch(box::meets)
                && Leader.of(x, y, box).map(line -> !strikes(line, x, y)).orElse(true);
    }

    private Stream<Box> written() {
        return layout.words().stream().map(Lettering::box);
    }

    private double out(Box box) {
        Box plot = layout.plot();
        return Math.max(0, -box.left())
                + Math.max(0, box.right() - layout.width())
                + Math.max(0, plot.top() - 7 - box.top())
                + Math.max(0, box.bottom() - plot.bottom());
    }
}
