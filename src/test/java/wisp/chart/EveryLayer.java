package wisp.chart;

import java.util.ArrayList;
import java.util.List;

/** One layer of every kind, and pictures that hold them one at a time. */
final class EveryLayer {

    static final Axis X = Axis.linear("Age (days)", Format.COUNT).within(0, 10);
    static final Axis Y = Axis.linear("Share", Format.NUMBER).within(0, 1);

    private EveryLayer() {}

    static List<Layer> drawn() {
        List<Mark> marks = List.of(Mark.at(2, 0.3, "second day").between(0.1, 0.5), Mark.at(6, 0.6, "sixth day"));
        List<Knot> knots = List.of(Knot.at(0, 0.9).between(0.8, 1), Knot.at(4, 0.7), Knot.at(9, 0.6));
        return List.of(
                new Points("", Ink.FIRST, Along.Y, marks),
                new Steps("", Ink.SECOND, knots),
                new Curve("", Ink.THIRD, knots),
                new Bars("", Ink.FOURTH, Along.Y, 1, marks),
                new Limit("target", Ink.ALARM, Along.Y, 0.5),
                new LimitCurve("", Ink.MUTED, false, knots),
                new Rug("", Ink.MUTED, Along.X, List.of(1.0, 2.0)),
                new NumbersAtRisk("All calves", Ink.FIRST, List.of(new NumbersAtRisk.Count(0, 40))));
    }

    static List<Layer> empty() {
        return List.of(
                new Points("Points", Ink.FIRST, Along.Y, List.of()),
                new Steps("Steps", Ink.SECOND, List.of()),
                new Curve("Curve", Ink.THIRD, List.of()),
                new Bars("Bars", Ink.FOURTH, Along.X, 1, List.of()),
                new LimitCurve("Limit curve", Ink.MUTED, true, List.of()),
                new Rug("Rug", Ink.SUMMARY, Along.X, List.of()),
                new NumbersAtRisk("All calves", Ink.ALARM, List.of()));
    }

    static List<Layer> single() {
        List<Knot> knot = List.of(Knot.at(4, 0.7).between(0.6, 0.8));
        return List.of(
                new Points(
                        "", Ink.FIRST, Along.X, List.of(Mark.at(2, 0.3, "only").between(1, 3))),
                new Steps("", Ink.SECOND, knot),
                new Curve("", Ink.THIRD, knot),
                new Bars(
                        "",
                        Ink.FIRST,
                        Along.Y,
                        1,
                        List.of(Mark.at(2, 0.3, "only").between(0.2, 0.4))),
                new LimitCurve("", Ink.MUTED, true, List.of(Knot.at(0, 0.2), Knot.at(9, 0.2))));
    }

    static Picture picture(Layer... layers) {
        return Picture.of("every-layer", "Every layer", "One layer of each kind.", X, Y, layers);
    }

    static Picture allBut(int left) {
        List<Layer> layers = new ArrayList<>(drawn());
        layers.remove(left);
        return picture(layers.toArray(Layer[]::new));
    }
}
