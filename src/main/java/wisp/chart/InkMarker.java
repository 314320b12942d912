package wisp.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import org.knowm.xchart.style.markers.Marker;

/** An ink as XChart and AWT need it: its colour on white paper, its dash and its dot. */
final class InkMarker extends Marker {

    private final Ink ink;

    InkMarker(Ink ink) {
        this.ink = ink;
    }

    /** The same colours as the light half of picture.css; Okabe and Ito (2008), some darker for contrast on white. */
    static Color colour(Ink ink) {
        return switch (ink) {
            case FIRST -> new Color(0x0072B2);
            case SECOND -> new Color(0x00805D);
            case THIRD -> new Color(0xA5537F);
            case FOURTH, SUMMARY -> Color.BLACK;
            case MUTED -> new Color(0x5F5B50);
            case ALARM -> new Color(0xC04F00);
        };
    }

    static float[] dash(Ink ink) {
        return switch (ink) {
            case FIRST, SUMMARY -> new float[0];
            case SECOND, ALARM -> new float[] {6, 3};
            case THIRD -> new float[] {2, 3};
            case FOURTH -> new float[] {8, 3, 2, 3};
            case MUTED -> new float[] {3, 3};
        };
    }

    @Override
    public void paint(Graphics2D g, double x, double y, int size) {
        g.setColor(colour(ink));
        switch (ink) {
            case FIRST -> g.fill(circle(x, y, 4.5));
            case MUTED -> g.fill(circle(x, y, 3));
            case SECOND -> ring(g, x, y);
            case THIRD -> g.fill(new Rectangle2D.Double(x - 4.2, y - 4.2, 8.4, 8.4));
            case FOURTH -> g.fill(polygon(x, y - 5.4, x + 5, y + 3.6, x - 5, y + 3.6));
            case SUMMARY -> g.fill(polygon(x, y - 6, x + 6, y, x, y + 6, x - 6, y));
            case ALARM -> cross(g, x, y);
        }
    }

    private void ring(Graphics2D g, double x, double y) {
        g.setColor(Color.WHITE);
        g.fill(circle(x, y, 4.2));
        g.setColor(colour(ink));
        g.setStroke(new BasicStroke(2));
        g.draw(circle(x, y, 4.2));
    }

    private static void cross(Graphics2D g, double x, double y) {
        g.setStroke(new BasicStroke(2.6f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(new Line2D.Double(x - 4.5, y - 4.5, x + 4.5, y + 4.5));
        g.draw(new Line2D.Double(x + 4.5, y - 4.5, x - 4.5, y + 4.5));
    }

    private static Ellipse2D circle(double x, double y, double radius) {
        return new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius);
    }

    private static Path2D polygon(double... places) {
        Path2D path = new Path2D.Double();
        path.moveTo(places[0], places[1]);
        for (int i = 2; i < places.length; i += 2) {
            path.lineTo(places[i], places[i + 1]);
        }
        path.closePath();
        return path;
    }
}
