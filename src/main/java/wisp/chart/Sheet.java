package wisp.chart;

import java.util.ArrayList;
import java.util.List;
import wisp.chart.Lettering.Anchor;
import wisp.chart.Lettering.Role;

/** Paper being filled from the top: lines of text are set one under the other, and the place reached is kept. */
final class Sheet {

    final double width;
    final List<Lettering> words = new ArrayList<>();
    final List<Key.Sample> key = new ArrayList<>();
    private double reached;

    Sheet(double width) {
        this.width = width;
    }

    double reached() {
        return reached;
    }

    void skip(double room) {
        reached += room;
    }

    /** Sets a paragraph, one line under the other. */
    void write(double x, double room, Anchor anchor, Role role, String text) {
        for (String line : Lettering.wrap(text, room)) {
            words.add(Lettering.of(x, reached + Lettering.SIZE, anchor, role, line));
            reached += Lettering.LINE;
        }
    }

    /** Sets the key: samples with names, in lines. */
    void writeKey(Picture picture) {
        double x = 0;
        boolean any = false;
        for (Layer layer : picture.layers()) {
            if (Key.leavesOut(layer)) {
                continue;
            }
            double wide = Key.SAMPLE + 6 + Lettering.width(layer.name());
            if (any && x + wide > width) {
                x = 0;
                reached += Lettering.LINE + 1;
            }
            key.add(new Key.Sample(x, reached + Lettering.SIZE / 2 + 2, layer));
            words.add(Lettering.of(x + Key.SAMPLE + 6, reached + Lettering.SIZE, Anchor.START, Role.KEY, layer.name()));
            x += wide + 16;
            any = true;
        }
        reached += any ? Lettering.LINE + 5 : 0;
    }

    /** Sets the names of upright limits above the plot, as many lines as they need. */
    void writeUprightLimits(Picture picture, Ruler x) {
        List<Lettering> set = new ArrayList<>();
        int lines = 0;
        for (Layer layer : picture.layers()) {
            if (layer instanceof Limit limit && limit.along() == Along.X) {
                double half = Lettering.width(limit.name()) / 2;
                double at = Math.max(half, Math.min(width - half, x.at(limit.value())));
                int line = 0;
                Lettering words = upright(at, line, limit);
                while (collides(words, set)) {
                    line++;
                    words = upright(at, line, limit);
                }
                set.add(words);
                lines = Math.max(lines, line + 1);
            }
        }
        words.addAll(set);
        reached += lines * Lettering.LINE;
    }

    private Lettering upright(double at, int line, Limit limit) {
        double y = reached + Lettering.SIZE + line * Lettering.LINE;
        return Lettering.of(at, y, Anchor.MIDDLE, Role.LIMIT, limit.name());
    }

    private static boolean collides(Lettering words, List<Lettering> others) {
        return others.stream().anyMatch(other -> other.box().meets(words.box()));
    }

    /** Sets the labels under the horizontal axis and its name. */
    void writeHorizontalAxis(Axis axis, List<Tick> ticks, Ruler x) {
        reached += 6;
        for (Tick tick : ticks) {
            words.add(
                    Lettering.of(x.at(tick.value()), reached + Lettering.SIZE, Anchor.MIDDLE, Role.TICK, tick.label()));
        }
        reached += Lettering.LINE;
        writeAxisName(axis, x);
    }

    void writeAxisName(Axis axis, Ruler x) {
        reached += 2;
        double half = Math.min(width / 2, Lettering.width(axis.label()) / 2);
        double middle = Math.max(half, Math.min(width - half, (x.from() + x.to()) / 2));
        write(middle, width, Anchor.MIDDLE, Role.AXIS, axis.label());
    }

    /** Sets what numbers stand for, one beside the other as far as there is room. */
    void writeNames(List<String> names) {
        reached += names.isEmpty() ? 0 : 4;
        double x = 0;
        for (String name : names) {
            double wide = Lettering.width(name);
            if (x > 0 && x + wide > width) {
                x = 0;
                reached += Lettering.LINE;
            }
            List<String> lines = Lettering.wrap(name, width);
            for (int i = 0; i < lines.size(); i++) {
                reached += i == 0 ? 0 : Lettering.LINE;
                words.add(Lettering.of(x, reached + Lettering.SIZE, Anchor.START, Role.KEY, lines.get(i)));
            }
            x += wide + 16;
        }
        reached += names.isEmpty() ? 0 : Lettering.LINE;
    }

    /** Sets the rows of numbers at risk; a count that would run into the one before it is left to the table. */
    void writeNumbersAtRisk(Picture picture, Ruler x) {
        boolean first = true;
        for (Layer layer : picture.layers()) {
            if (!(layer instanceof NumbersAtRisk row)) {
                continue;
            }
            if (first) {
                reached += 4;
                write(0, width, Anchor.START, Role.AXIS, "Number at risk");
                first = false;
            }
            key.add(new Key.Sample(0, reached + Lettering.SIZE / 2 + 2, layer));
            write(Key.SAMPLE + 6, width - Key.SAMPLE - 6, Anchor.START, Role.RISK, row.name());
            Box before = null;
            for (NumbersAtRisk.Count count : row.counts()) {
                Lettering words = Lettering.of(
                        x.at(count.x()), reached + Lettering.SIZE, Anchor.MIDDLE, Role.RISK, "" + count.atRisk());
                if (before == null || !before.meets(words.box())) {
                    this.words.add(words);
                    before = words.box();
                }
            }
            reached += Lettering.LINE;
        }
    }
}
