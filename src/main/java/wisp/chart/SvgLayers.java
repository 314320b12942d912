package wisp.chart;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Draws each kind of layer as SVG. */
final class SvgLayers implements Layer.Reader<String> {

    private static final double FINGER = 24;
    private final Layout layout;
    private final String clipId;

    SvgLayers(Layout layout, String clipId) {
        this.layout = layout;
        this.clipId = clipId;
    }

    @Override
    public String points(Points layer) {
        return group("points", layer, marks(layer.marks(), mark -> point(layer, mark)));
    }

    private String point(Points layer, Mark mark) {
        double x = layout.markX(layer, mark);
        double y = layout.markY(layer, mark);
        Ruler ruler = layer.along() == Along.X ? layout.x() : layout.y();
        String drawn;
        if (!mark.hasInterval()) {
            drawn = SvgShape.dot(layer.ink(), x, y);
        } else if (layer.ink() == Ink.SUMMARY && layer.along() == Along.X) {
            drawn = SvgShape.diamond(
                    ruler.cut(mark.low().getAsDouble()),
                    x,
                    ruler.cut(mark.high().getAsDouble()),
                    y);
        } else {
            drawn = SvgShape.whisker(mark, ruler, layer.along() == Along.X ? y : x, layer.along())
                    + SvgShape.dot(layer.ink(), x, y);
        }
        return linked(mark, drawn, Box.around(x, y, FINGER / 2));
    }

    @Override
    public String bars(Bars layer) {
        return group("bars", layer, marks(layer.marks(), mark -> bar(layer, mark)));
    }

    private String bar(Bars layer, Mark mark) {
        boolean tall = layer.along() == Along.Y;
        Ruler value = tall ? layout.y() : layout.x();
        double middle = tall ? layout.markX(layer, mark) : layout.markY(layer, mark);
        Box box = layout.bar(layer, mark);
        String drawn = SvgPainter.rect(" class=\"bar\"", box)
                + (mark.hasInterval() ? SvgShape.whisker(mark, value, middle, layer.along()) : "");
        return linked(mark, drawn, tall ? taller(box) : longer(box));
    }

    /** A low bar is hard to hit: its link reaches up for a finger's height. */
    private static Box taller(Box box) {
        return new Box(box.left(), Math.min(box.top(), box.bottom() - FINGER), box.right(), box.bottom());
    }

    private static Box longer(Box box) {
        return new Box(box.left(), box.top(), Math.max(box.right(), box.left() + FINGER), box.bottom());
    }

    @Override
    public String steps(Steps layer) {
        return curve("steps", layer, layer.knots(), true);
    }

    @Override
    public String curve(Curve layer) {
        return curve("curve", layer, layer.knots(), false);
    }

    private String curve(String kind, Layer layer, List<Knot> knots, boolean stepped) {
        String bands = Outline.bands(knots, stepped).stream()
                .map(band -> clipped("band", band, "z"))
                .collect(Collectors.joining());
        String line = knots.size() == 1
                ? SvgShape.dot(
                        layer.ink(),
                        layout.x().at(knots.get(0).x()),
                        layout.y().at(knots.get(0).y()))
                : clipped("line", Outline.line(knots, stepped), "");
        return group(kind, layer, knots.isEmpty() ? "" : bands + line + "\n");
    }

    @Override
    public String limitCurve(LimitCurve layer) {
        return group("limit", layer, clipped("line", Outline.line(layer.knots(), layer.stepped()), "") + "\n");
    }

    private String clipped(String kind, List<Outline.Corner> all, String end) {
        List<Outline.Corner> corners = Outline.shown(all, layout.y().domain());
        String clip = SvgShape.leaves(corners, layout) ? "\" clip-path=\"url(#" + clipId + ")" : "";
        return SvgShape.path(kind + clip, SvgShape.chain(corners, layout) + end);
    }

    @Override
    public String limit(Limit layer) {
        Box plot = layout.plot();
        String d = layer.along() == Along.Y
                ? "M" + Xml.at(plot.left(), layout.y().at(layer.value())) + "H" + Xml.px(plot.right())
                : "M" + Xml.at(layout.x().at(layer.value()), plot.top()) + "V" + Xml.px(plot.bottom());
        return group("limit", layer, SvgShape.path("line", d) + "\n");
    }

    @Override
    public String rug(Rug layer) {
        Box plot = layout.plot();
        String d = layer.places().stream()
                .map(place -> layer.along() == Along.X
                        ? "M" + Xml.at(layout.x().at(place), plot.bottom()) + "v-7"
                        : "M" + Xml.at(plot.left(), layout.y().at(place)) + "h7")
                .collect(Collectors.joining());
        return group("rug", layer, SvgShape.path("line", d) + "\n");
    }

    /** The rows are lettering under the axis, set with the layout. */
    @Override
    public String numbersAtRisk(NumbersAtRisk layer) {
        return "";
    }

    private static String marks(List<Mark> marks, Function<Mark, String> draw) {
        return marks.stream().map(draw).collect(Collectors.joining());
    }

    private static String group(String kind, Layer layer, String content) {
        return "<g class=\"" + kind + " " + SvgShape.ink(layer) + "\">\n" + content + "</g>\n";
    }

    private static String linked(Mark mark, String drawn, Box reach) {
        String words = Xml.text(mark.words());
        // what is drawn may be large enough for a finger by itself
        boolean covered = drawn.endsWith(SvgPainter.rect(" class=\"bar\"", reach));
        String hit = covered ? "" : SvgShape.hit(reach);
        return mark.link()
                .map(page -> "<a href=\"" + Xml.text(page) + "\"><title>" + words + "</title>" + drawn + hit + "</a>\n")
                .orElse("<g><title>" + words + "</title>" + drawn + "</g>\n");
    }
}
