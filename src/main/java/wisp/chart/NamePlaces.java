package wisp.chart;

import java.util.ArrayList;
import java.util.List;
import wisp.chart.Lettering.Anchor;
import wisp.chart.Lettering.Role;

/** Where the words of a dot may stand: beside it, the best place first, or away from it, to be joined by a line. */
final class NamePlaces {

    private static final double GAP = 8;
    private static final double[] AWAY = {16, 26, 38, 52, 68};
    private static final double SLANT = Math.sqrt(0.5);

    private NamePlaces() {}

    /** Places that touch the dot. */
    static List<Lettering> beside(double x, double y, String words) {
        double above = y - GAP - 1;
        double below = y + GAP + 10;
        return List.of(
                at(x + GAP, y + 4.5, Anchor.START, words),
                at(x - GAP, y + 4.5, Anchor.END, words),
                at(x, above, Anchor.MIDDLE, words),
                at(x, below, Anchor.MIDDLE, words),
                at(x + 4, above, Anchor.START, words),
                at(x + 4, below, Anchor.START, words),
                at(x - 4, above, Anchor.END, words),
                at(x - 4, below, Anchor.END, words));
    }

    /** Places beside the dot, then those around it, farther and farther away. */
    static List<Lettering> around(double x, double y, String words) {
        List<Lettering> places = new ArrayList<>(beside(x, y, words));
        for (double far : AWAY) {
            double slant = far * SLANT;
            places.add(at(x + far, y + 4.5, Anchor.START, words));
            places.add(at(x - far, y + 4.5, Anchor.END, words));
            places.add(at(x, y - far, Anchor.MIDDLE, words));
            places.add(at(x, y + far + 9, Anchor.MIDDLE, words));
            places.add(at(x + slant, y - slant, Anchor.START, words));
            places.add(at(x + slant, y + slant + 9, Anchor.START, words));
            places.add(at(x - slant, y - slant, Anchor.END, words));
            places.add(at(x - slant, y + slant + 9, Anchor.END, words));
        }
        return places;
    }

    private static Lettering at(double x, double y, Anchor anchor, String words) {
        return Lettering.of(x, y, anchor, Role.CAPTION, words);
    }
}
