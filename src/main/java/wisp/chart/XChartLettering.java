package wisp.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;

/** Sets the lettering of a layout around and over an XChart plot. */
final class XChartLettering {

    private static final Color PENCIL = new Color(0x5F5B50);

    private XChartLettering() {}

    static void paint(Graphics2D g, Layout layout) {
        g.setColor(PENCIL);
        g.setStroke(new BasicStroke(1));
        layout.leaders().forEach(line -> g.draw(new Line2D.Double(line.fromX(), line.fromY(), line.toX(), line.toY())));
        for (Lettering words : layout.words()) {
            boolean limit = words.role() == Lettering.Role.LIMIT;
            g.setFont(new Font(Font.SANS_SERIF, limit ? Font.ITALIC : Font.PLAIN, (int) Lettering.SIZE));
            g.setColor(limit || words.role() == Lettering.Role.AXIS ? PENCIL : Color.BLACK);
            AffineTransform before = g.getTransform();
            g.translate(words.x(), words.y());
            if (words.upright()) {
                g.rotate(-Math.PI / 2);
            }
            double wide = g.getFontMetrics().getStringBounds(words.text(), g).getWidth();
            double left = switch (words.anchor()) {
                case START -> 0;
                case MIDDLE -> -wide / 2;
                case END -> -wide;
            };
            halo(g, words.text(), left);
            g.drawString(words.text(), (float) left, 0f);
            g.setTransform(before);
        }
    }

    /** White around the letters, so that they stay legible over lines and bars. */
    private static void halo(Graphics2D g, String text, double left) {
        Color ink = g.getColor();
        Shape letters =
                g.getFont().createGlyphVector(g.getFontRenderContext(), text).getOutline((float) left, 0f);
        g.setColor(Color.WHITE);
        g.setStroke(new BasicStroke(3, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(letters);
        g.setColor(ink);
    }
}
