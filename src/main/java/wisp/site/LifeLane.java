package wisp.site;

import java.util.ArrayList;
import java.util.List;
import wisp.chart.Along;
import wisp.chart.Curve;
import wisp.chart.Ink;
import wisp.chart.Knot;
import wisp.chart.Layer;
import wisp.chart.Mark;
import wisp.chart.Points;

/**
 * One row of a calf's line of time: spans, and the events that stand on them.
 *
 * @param name what the row is about
 * @param bar the part that its spans play
 * @param spans from where to where, along the line of time
 * @param dot the part that all its events play
 * @param events where each stands and what it says; the row is not known to them yet
 */
record LifeLane(String name, Ink bar, List<Span> spans, Ink dot, List<Mark> events) {

    /** A stretch of time. */
    record Span(double from, double to) {}

    /** A row of events alone. */
    static LifeLane of(String name, List<Mark> events) {
        return new LifeLane(name, Ink.MUTED, List.of(), Ink.FIRST, events);
    }

    boolean isEmpty() {
        return spans.isEmpty() && events.isEmpty();
    }

    /** The rows as layers: spans at the back, and one layer of events an ink, so that no event steps aside. */
    static List<Layer> layers(List<LifeLane> lanes) {
        List<Layer> layers = new ArrayList<>();
        for (int row = 0; row < lanes.size(); row++) {
            for (Span span : lanes.get(row).spans()) {
                List<Knot> knots = List.of(Knot.at(span.from(), row), Knot.at(span.to(), row));
                layers.add(new Curve("", lanes.get(row).bar(), knots));
            }
        }
        for (Ink ink : List.of(Ink.FIRST, Ink.ALARM)) {
            List<Mark> marks = new ArrayList<>();
            for (int row = 0; row < lanes.size(); row++) {
                if (lanes.get(row).dot() == ink) {
                    int at = row;
                    lanes.get(row).events().forEach(mark -> marks.add(inRow(mark, at)));
                }
            }
            if (!marks.isEmpty()) {
                layers.add(new Points("", ink, Along.X, marks));
            }
        }
        return layers;
    }

    private static Mark inRow(Mark mark, int row) {
        return new Mark(
                mark.x(), row, mark.low(), mark.high(), mark.label(), mark.hover(), mark.caption(), mark.link());
    }
}
