package wisp.chart;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Curves and bands as chains of corners, still in the axes' own units. */
final class Outline {

    private Outline() {}

    /**
     * One corner.
     *
     * @param x along the x axis
     * @param y along the y axis
     */
    record Corner(double x, double y) {}

    /** The knots of a layer that is a curve of any kind; none for the others. */
    static List<Knot> knots(Layer layer) {
        if (layer instanceof Steps steps) {
            return steps.knots();
        }
        if (layer instanceof Curve curve) {
            return curve.knots();
        }
        return layer instanceof LimitCurve limit ? limit.knots() : List.of();
    }

    /** The corners of the line through the knots. */
    static List<Corner> line(List<Knot> knots, boolean stepped) {
        return chain(knots.stream().map(knot -> new Corner(knot.x(), knot.y())).toList(), stepped);
    }

    /** The corners of the bands, one closed chain for each run of knots that have limits. */
    static List<List<Corner>> bands(List<Knot> knots, boolean stepped) {
        List<List<Corner>> bands = new ArrayList<>();
        List<Corner> lower = new ArrayList<>();
        List<Corner> upper = new ArrayList<>();
        for (Knot knot : knots) {
            if (knot.hasBand()) {
                lower.add(new Corner(knot.x(), knot.low().getAsDouble()));
                upper.add(new Corner(knot.x(), knot.high().getAsDouble()));
                continue;
            }
            if (stepped && !lower.isEmpty()) {
                lower.add(new Corner(knot.x(), lower.get(lower.size() - 1).y()));
                upper.add(new Corner(knot.x(), upper.get(upper.size() - 1).y()));
            }
            close(bands, lower, upper, stepped);
        }
        close(bands, lower, upper, stepped);
        return bands;
    }

    private static void close(List<List<Corner>> bands, List<Corner> lower, List<Corner> upper, boolean stepped) {
        if (!lower.isEmpty()) {
            List<Corner> band = new ArrayList<>(chain(upper, stepped));
            List<Corner> back = new ArrayList<>(chain(lower, stepped));
            Collections.reverse(back);
            band.addAll(back);
            bands.add(band);
        }
        lower.clear();
        upper.clear();
    }

    private static List<Corner> chain(List<Corner> corners, boolean stepped) {
        if (!stepped) {
            return List.copyOf(corners);
        }
        List<Corner> chain = new ArrayList<>();
        for (Corner corner : corners) {
            if (!chain.isEmpty()) {
                chain.add(new Corner(corner.x(), chain.get(chain.size() - 1).y()));
            }
            chain.add(corner);
        }
        return chain;
    }

    /** The chain with what a log axis cannot show, zero and below, laid onto its lower end. */
    static List<Corner> shown(List<Corner> corners, Domain y) {
        return corners.stream()
                .map(corner -> y.log() && corner.y() <= 0 ? new Corner(corner.x(), y.low()) : corner)
                .toList();
    }

    /** The chain cut into the parts that lie inside the domains. */
    static List<List<Corner>> inside(List<Corner> corners, Domain x, Domain y) {
        List<List<Corner>> parts = new ArrayList<>();
        List<Corner> part = new ArrayList<>();
        for (Corner corner : withCrossings(corners, x, y)) {
            if (x.holds(corner.x()) && y.holds(corner.y())) {
                part.add(corner);
            } else if (!part.isEmpty()) {
                parts.add(List.copyOf(part));
                part.clear();
            }
        }
        if (!part.isEmpty()) {
            parts.add(List.copyOf(part));
        }
        return parts;
    }

    /** The closed chain with all that lies outside the domains pressed onto their ends. */
    static List<Corner> pressed(List<Corner> corners, Domain x, Domain y) {
        return withCrossings(corners, x, y).stream()
                .map(corner -> new Corner(x.cut(corner.x()), y.cut(corner.y())))
                .toList();
    }

    private static List<Corner> withCrossings(List<Corner> corners, Domain x, Domain y) {
        List<Corner> all = corners;
        for (double end : new double[] {x.low(), x.high()}) {
            all = crossed(all, end, true);
        }
        for (double end : new double[] {y.low(), y.high()}) {
            all = crossed(all, end, false);
        }
        return all;
    }

    private static List<Corner> crossed(List<Corner> corners, double end, boolean alongX) {
        List<Corner> all = new ArrayList<>();
        for (Corner corner : corners) {
            if (!all.isEmpty()) {
                Corner before = all.get(all.size() - 1);
                double from = (alongX ? before.x() : before.y()) - end;
                double to = (alongX ? corner.x() : corner.y()) - end;
                if (from * to < 0) {
                    double share = from / (from - to);
                    double x = before.x() + share * (corner.x() - before.x());
                    double y = before.y() + share * (corner.y() - before.y());
                    all.add(alongX ? new Corner(end, y) : new Corner(x, end));
                }
            }
            all.add(corner);
        }
        return all;
    }
}
