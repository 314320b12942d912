package wisp.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import wisp.chart.Outline.Corner;

/**
 * Says of each kind of layer which XChart series draw it.
 *
 * <p>XChart has error bars only upwards and of one length on both sides; whiskers are therefore line series with gaps,
 * bands and bars are polygon series.
 */
final class XChartTraces implements Layer.Reader<List<Trace>> {

    private static final double CAP = 4;
    private static final float[] FULL = {};
    private final Layout layout;

    XChartTraces(Layout layout) {
        this.layout = layout;
    }

    @Override
    public List<Trace> points(Points layer) {
        List<Trace> traces = new ArrayList<>();
        List<Corner> dots = new ArrayList<>();
        List<List<Corner>> whiskers = new ArrayList<>();
        for (Mark mark : layer.marks()) {
            double x = layout.markX(layer, mark);
            double y = layout.markY(layer, mark);
            if (mark.hasInterval() && layer.ink() == Ink.SUMMARY && layer.along() == Along.X) {
                double low = layout.x().cut(mark.low().getAsDouble());
                double high = layout.x().cut(mark.high().getAsDouble());
                List<Corner> diamond =
                        List.of(new Corner(low, y), new Corner(x, y - 7), new Corner(high, y), new Corner(x, y + 7));
                traces.add(Trace.area(layer.ink(), 1, 1, diamond));
                continue;
            }
            dots.add(new Corner(x, y));
            if (mark.hasInterval()) {
                boolean level = layer.along() == Along.X;
                whiskers.addAll(whisker(mark, level ? layout.x() : layout.y(), level ? y : x, level));
            }
        }
        traces.add(Trace.line(layer.ink(), 1.8, FULL, whiskers));
        traces.add(Trace.dots(layer.ink(), dots));
        return traces;
    }

    private static List<List<Corner>> whisker(Mark mark, Ruler ruler, double across, boolean level) {
        double low = ruler.cut(mark.low().getAsDouble());
        double high = ruler.cut(mark.high().getAsDouble());
        double ahead = Math.signum(ruler.to() - ruler.from());
        boolean lowCut = !ruler.domain().holds(mark.low().getAsDouble());
        boolean highCut = !ruler.domain().holds(mark.high().getAsDouble());
        return List.of(
                List.of(place(low, across, level), place(high, across, level)),
                end(low, across, level, lowCut ? ahead : 0),
                end(high, across, level, highCut ? -ahead : 0));
    }

    private static List<Corner> end(double at, double across, boolean level, double back) {
        double foot = at + back * CAP;
        return List.of(place(foot, across - CAP, level), place(at, across, level), place(foot, across + CAP, level));
    }

    private static Corner place(double at, double across, boolean level) {
        return level ? new Corner(at, across) : new Corner(across, at);
    }

    @Override
    public List<Trace> bars(Bars layer) {
        List<Trace> traces = new ArrayList<>();
        List<List<Corner>> whiskers = new ArrayList<>();
        for (Mark mark : layer.marks()) {
            Box box = layout.bar(layer, mark);
            traces.add(Trace.area(
                    layer.ink(),
                    1,
                    layer.ink() == Ink.SECOND ? 0.15 : 0.75,
                    List.of(
                            new Corner(box.left(), box.bottom()),
                            new Corner(box.left(), box.top()),
                            new Corner(box.right(), box.top()),
                            new Corner(box.right(), box.bottom()))));
            if (mark.hasInterval()) {
                boolean level = layer.along() == Along.X;
                double middle = level ? layout.markY(layer, mark) : layout.markX(layer, mark);
                whiskers.addAll(whisker(mark, level ? layout.x() : layout.y(), middle, level));
            }
        }
        traces.add(Trace.line(Ink.SUMMARY, 1.8, FULL, whiskers));
        return traces;
    }

    @Override
    public List<Trace> steps(Steps layer) {
        return curve(layer.ink(), layer.knots(), true);
    }

    @Override
    public List<Trace> curve(Curve layer) {
        return curve(layer.ink(), layer.knots(), false);
    }

    private List<Trace> curve(Ink ink, List<Knot> knots, boolean stepped) {
        List<Trace> traces = new ArrayList<>();
        for (List<Corner> band : Outline.bands(knots, stepped)) {
            Domain up = layout.y().domain();
            List<Corner> pressed =
                    Outline.pressed(Outline.shown(band, up), layout.x().domain(), up);
            traces.add(Trace.area(ink, 0.6, 0.16, onPaper(pressed)));
        }
        traces.add(
                knots.size() == 1
                        ? Trace.dots(ink, onPaper(Outline.line(knots, stepped)))
                        : line(ink, 2, Outline.line(knots, stepped)));
        return traces;
    }

    private Trace line(Ink ink, double width, List<Corner> corners) {
        List<List<Corner>> parts = Outline.inside(
                        corners, layout.x().domain(), layout.y().domain())
                .stream()
                .map(this::onPaper)
                .toList();
        return Trace.line(ink, width, InkMarker.dash(ink), parts);
    }

    private List<Corner> onPaper(List<Corner> corners) {
        return corners.stream()
                .map(corner -> new Corner(layout.x().at(corner.x()), layout.y().at(corner.y())))
                .toList();
    }

    @Override
    public List<Trace> limit(Limit layer) {
        Box plot = layout.plot();
        double at = (layer.along() == Along.Y ? layout.y() : layout.x()).at(layer.value());
        List<Corner> corners = layer.along() == Along.Y
                ? List.of(new Corner(plot.left(), at), new Corner(plot.right(), at))
                : List.of(new Corner(at, plot.top()), new Corner(at, plot.bottom()));
        return List.of(Trace.line(layer.ink(), 1.3, InkMarker.dash(layer.ink()), List.of(corners)));
    }

    @Override
    public List<Trace> limitCurve(LimitCurve layer) {
        return List.of(line(layer.ink(), 1.3, Outline.line(layer.knots(), layer.stepped())));
    }

    @Override
    public List<Trace> rug(Rug layer) {
        Box plot = layout.plot();
        Stream<List<Corner>> strokes = layer.places().stream().map(place -> {
            double at = (layer.along() == Along.X ? layout.x() : layout.y()).at(place);
            return layer.along() == Along.X
                    ? List.of(new Corner(at, plot.bottom()), new Corner(at, plot.bottom() - 7))
                    : List.of(new Corner(plot.left(), at), new Corner(plot.left() + 7, at));
        });
        return List.of(Trace.line(layer.ink(), 1, FULL, strokes.toList()));
    }

    /** The rows are lettering under the axis, set with the layout. */
    @Override
    public List<Trace> numbersAtRisk(NumbersAtRisk layer) {
        return List.of();
    }
}
