package wisp.chart;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** Draws a layer's sample for the key beside an XChart plot. */
final class XChartKey implements Layer.Reader<Void> {

    private final Graphics2D g;
    private final Key.Sample sample;
    private final Color colour;

    XChartKey(Graphics2D g, Key.Sample sample) {
        this.g = g;
        this.sample = sample;
        this.colour = InkMarker.colour(sample.layer().ink());
    }

    private Void stroke(double width, float[] dash) {
        g.setColor(colour);
        g.setStroke(Trace.stroke(width, dash));
        g.draw(new Line2D.Double(sample.x(), sample.y(), sample.x() + Key.SAMPLE, sample.y()));
        return null;
    }

    private Void patch(double opacity) {
        g.setColor(new Color(colour.getRed(), colour.getGreen(), colour.getBlue(), (int) Math.round(opacity * 255)));
        g.fill(new Rectangle2D.Double(sample.x(), sample.y() - 5, Key.SAMPLE, 10));
        return null;
    }

    @Override
    public Void points(Points layer) {
        if (layer.marks().stream().anyMatch(Mark::hasInterval) && layer.ink() != Ink.SUMMARY) {
            stroke(1.8, new float[0]);
        }
        new InkMarker(layer.ink()).paint(g, sample.x() + Key.SAMPLE / 2, sample.y(), 9);
        return null;
    }

    @Override
    public Void steps(Steps layer) {
        return lineWithBand(layer.knots());
    }

    @Override
    public Void curve(Curve layer) {
        return lineWithBand(layer.knots());
    }

    private Void lineWithBand(List<Knot> knots) {
        if (knots.stream().anyMatch(Knot::hasBand)) {
            patch(0.16);
        }
        return stroke(2, InkMarker.dash(sample.layer().ink()));
    }

    @Override
    public Void bars(Bars layer) {
        patch(layer.ink() == Ink.SECOND ? 0.15 : 0.75);
        g.setColor(colour);
        g.setStroke(Trace.stroke(1, new float[0]));
        g.draw(new Rectangle2D.Double(sample.x(), sample.y() - 5, Key.SAMPLE, 10));
        return null;
    }

    @Override
    public Void limit(Limit layer) {
        return stroke(1.3, InkMarker.dash(layer.ink()));
    }

    @Override
    public Void limitCurve(LimitCurve layer) {
        return stroke(1.3, InkMarker.dash(layer.ink()));
    }

    @Override
    public Void rug(Rug layer) {
        g.setColor(colour);
        g.setStroke(Trace.stroke(1, new float[0]));
        for (double x = 6; x <= 16; x += 5) {
            g.draw(new Line2D.Double(sample.x() + x, sample.y() + 4, sample.x() + x, sample.y() - 4));
        }
        return null;
    }

    @Override
    public Void numbersAtRisk(NumbersAtRisk layer) {
        return stroke(2, InkMarker.dash(layer.ink()));
    }
}
