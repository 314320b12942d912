package wisp.chart;

import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;

/** The small shapes of the SVG painter. */
final class SvgShape {

    private static final double CAP = 4;

    private SvgShape() {}

    /** The class of an ink. */
    static String ink(Layer layer) {
        return "ink-" + layer.ink().name().toLowerCase(Locale.ROOT);
    }

    /** The dot of an ink; every ink has its own shape. */
    static String dot(Ink ink, double x, double y) {
        return switch (ink) {
            case FIRST -> circle("dot", x, y, 4.5);
            case SECOND -> circle("ring", x, y, 4.2);
            case MUTED -> circle("dot", x, y, 3);
            case THIRD -> path("dot", "M" + Xml.at(x - 4.2, y - 4.2) + "h8.4v8.4h-8.4z");
            case FOURTH -> path("dot", "M" + Xml.at(x, y - 5.4) + "l5,9h-10z");
            case SUMMARY -> path("dot", "M" + Xml.at(x, y - 6) + "l6,6l-6,6l-6,-6z");
            case ALARM -> path("cross", "M" + Xml.at(x - 4.5, y - 4.5) + "l9,9m0,-9l-9,9");
        };
    }

    /** What a finger finds: a path, which takes fewer letters than a rectangle. */
    static String hit(Box box) {
        String width = Xml.px(box.width());
        return path(
                "hit",
                "M" + Xml.at(box.left(), box.top()) + "h" + width + "v" + Xml.px(box.height()) + "h-" + width + "z");
    }

    /** A summary's diamond drawn as wide as its interval. */
    static String diamond(double low, double x, double high, double y) {
        return path(
                "dot",
                "M" + Xml.at(low, y) + "L" + Xml.at(x, y - 7) + "L" + Xml.at(high, y) + "L" + Xml.at(x, y + 7) + "z");
    }

    /** A whisker along the ruler at the given place across it; an end cut off by the axis gets an arrow head. */
    static String whisker(Mark mark, Ruler ruler, double across, Along along) {
        double low = mark.low().getAsDouble();
        double high = mark.high().getAsDouble();
        double from = ruler.cut(low);
        double to = ruler.cut(high);
        double ahead = Math.signum(ruler.to() - ruler.from());
        String d = "M" + place(from, across, along) + straight(to, along)
                + end(from, across, along, ruler.domain().holds(low) ? 0 : ahead)
                + end(to, across, along, ruler.domain().holds(high) ? 0 : -ahead);
        return path("whisker", d);
    }

    private static String end(double at, double across, Along along, double back) {
        double foot = at + back * CAP;
        return back == 0
                ? "M" + place(at, across - CAP, along) + cap(along)
                : "M" + place(foot, across - CAP, along) + "L" + place(at, across, along) + "L"
                        + place(foot, across + CAP, along);
    }

    private static String straight(double to, Along along) {
        return (along == Along.X ? "H" : "V") + Xml.px(to);
    }

    private static String cap(Along along) {
        return (along == Along.X ? "v" : "h") + Xml.px(2 * CAP);
    }

    private static String place(double at, double across, Along along) {
        return along == Along.X ? Xml.at(at, across) : Xml.at(across, at);
    }

    /** The chain of corners on paper. */
    static String chain(List<Outline.Corner> corners, Layout layout) {
        StringBuilder d = new StringBuilder();
        for (Outline.Corner corner : corners) {
            d.append(d.isEmpty() ? "M" : "L")
                    .append(Xml.at(layout.x().at(corner.x()), layout.y().at(corner.y())));
        }
        return d.toString();
    }

    /** Whether any corner lies outside the plot. */
    static boolean leaves(List<Outline.Corner> corners, Layout layout) {
        Predicate<Outline.Corner> inside = corner ->
                layout.x().domain().holds(corner.x()) && layout.y().domain().holds(corner.y());
        return !corners.stream().allMatch(inside);
    }

    static String path(String kind, String d) {
        return "<path class=\"" + kind + "\" d=\"" + d + "\"/>";
    }

    private static String circle(String kind, double x, double y, double radius) {
        return "<circle class=\"%s\" cx=\"%s\" cy=\"%s\" r=\"%s\"/>"
                .formatted(kind, Xml.px(x), Xml.px(y), Xml.px(radius));
    }
}
