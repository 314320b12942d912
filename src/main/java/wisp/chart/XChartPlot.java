package wisp.chart;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.util.ArrayList;
import java.util.List;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.XYSeries.XYSeriesRenderStyle;
import org.knowm.xchart.style.XYStyler;
import org.knowm.xchart.style.markers.SeriesMarkers;
import wisp.chart.Outline.Corner;

/**
 * The space between the axes as one XChart chart without axes of its own.
 *
 * <p>The chart is given pixels as its units, y turned upwards, and reaches a little beyond the plot, as XChart cuts off
 * whatever sticks out of its own.
 */
final class XChartPlot {

    private static final int REACH = 10;
    private static final Color FAINT = new Color(0xD9D4C5);
    private final Layout layout;
    private final double left;
    private final double top;
    private final int width;
    private final int height;
    private final XYChart chart;

    XChartPlot(Layout layout) {
        this.layout = layout;
        this.left = Math.floor(layout.plot().left()) - REACH;
        this.top = Math.floor(layout.plot().top()) - REACH;
        this.width = (int) Math.ceil(layout.plot().width()) + 2 * REACH;
        this.height = (int) Math.ceil(layout.plot().height()) + 2 * REACH;
        this.chart = new XYChart(width, height);
        bare(chart.getStyler());
    }

    private void bare(XYStyler styler) {
        styler.setChartTitleVisible(false)
                .setLegendVisible(false)
                .setChartPadding(0)
                .setPlotBorderVisible(false)
                .setPlotContentSize(1.0)
                .setChartBackgroundColor(Color.WHITE)
                .setPlotBackgroundColor(Color.WHITE)
                .setMarkerSize(9);
        styler.setAxisTicksVisible(false)
                .setAxisTitlesVisible(false)
                .setPlotMargin(0)
                .setPlotGridLinesVisible(false)
                .setXAxisMin(0.0)
                .setXAxisMax((double) width)
                .setYAxisMin(0.0)
                .setYAxisMax((double) height);
    }

    void paint(Graphics2D g) {
        grid();
        XChartTraces traces = new XChartTraces(layout);
        layout.picture().layers().forEach(layer -> layer.read(traces).forEach(this::add));
        AffineTransform before = g.getTransform();
        Shape clip = g.getClip();
        g.translate(left, top);
        chart.paint(g, width, height);
        g.setTransform(before);
        g.setClip(clip);
    }

    private void grid() {
        Box plot = layout.plot();
        List<List<Corner>> lines = new ArrayList<>();
        if (!layout.picture().x().isCategories()) {
            for (Tick tick : layout.xTicks()) {
                double x = layout.x().at(tick.value());
                lines.add(List.of(new Corner(x, plot.top()), new Corner(x, plot.bottom())));
            }
        }
        for (Tick tick : layout.yTicks()) {
            double y = layout.y().at(tick.value());
            lines.add(List.of(new Corner(plot.left(), y), new Corner(plot.right(), y)));
        }
        series(Trace.line(Ink.MUTED, 1, new float[] {1, 3}, lines), FAINT);
        List<Corner> edge = List.of(new Corner(plot.left(), plot.bottom()), new Corner(plot.right(), plot.bottom()));
        add(Trace.line(Ink.MUTED, 1, new float[0], List.of(edge)));
    }

    private void add(Trace trace) {
        series(trace, InkMarker.colour(trace.ink()));
    }

    private void series(Trace trace, Color colour) {
        List<Corner> corners = new ArrayList<>();
        for (List<Corner> part : trace.parts()) {
            if (!corners.isEmpty()) {
                corners.add(new Corner(part.get(0).x(), Double.NaN));
            }
            corners.addAll(part);
        }
        if (corners.isEmpty()) {
            return;
        }
        double[] xs = corners.stream().mapToDouble(corner -> corner.x() - left).toArray();
        double[] ys = corners.stream()
                .mapToDouble(corner -> height - (corner.y() - top))
                .toArray();
        XYSeries series =
                chart.addSeries("series " + chart.getSeriesCollection().size(), xs, ys);
        series.setLineColor(colour);
        series.setLineStyle(trace.stroke());
        series.setMarker(trace.form() == Trace.Form.DOTS ? new InkMarker(trace.ink()) : SeriesMarkers.NONE);
        series.setMarkerColor(colour);
        series.setFillColor(new Color(
                colour.getRed(), colour.getGreen(), colour.getBlue(), (int) Math.round(trace.opacity() * 255)));
        series.setXYSeriesRenderStyle(
                switch (trace.form()) {
                    case LINE -> XYSeriesRenderStyle.Line;
                    case AREA -> XYSeriesRenderStyle.PolygonArea;
                    case DOTS -> XYSeriesRenderStyle.Scatter;
                });
    }
}
