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
}
