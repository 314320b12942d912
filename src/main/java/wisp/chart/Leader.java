package wisp.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A thin line that joins a dot to its name where the name stands away from it, in pixels. */
record Leader(double fromX, double fromY, double toX, double toY) {

    /** Names nearer than this need none. */
    private static final double BESIDE = 13;

    private static final double DOT = 6;

    /** The line from the dot at a place to the nearest point of its name's box; empty where the name is beside it. */
    static Optional<Leader> of(double x, double y, Box name) {
        double toX = Math.max(name.left(), Math.min(name.right(), x));
        double toY = Math.max(name.top(), Math.min(name.bottom(), y));
        double far = Math.hypot(toX - x, toY - y);
        return far <= BESIDE
                ? Optional.empty()
                : Optional.of(new Leader(x + (toX - x) * DOT / far, y + (toY - y) * DOT / far, toX, toY));
    }

    double length() {
        return Math.hypot(toX - fromX, toY - fromY);
    }

    /** The line as a chain of small boxes, so that words and dots can keep clear of it. */
    List<Box> boxes() {
        List<Box> boxes = new ArrayList<>();
        int pieces = (int) Math.ceil(length() / 3);
        // its end lies on its own name
        for (int i = 0; i < pieces; i++) {
            double share = (double) i / pieces;
            boxes.add(Box.around(fromX + share * (toX - fromX), fromY + share * (toY - fromY), 1.5));
        }
        return boxes;
    }
}
