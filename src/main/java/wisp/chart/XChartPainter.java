package wisp.chart;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.OptionalDouble;
import javax.imageio.ImageIO;

/**
 * Paints a picture as PNG through XChart, for files and print; dark ink on white, title on top.
 *
 * <p>The places of axes, labels and key are those of the SVG painter; XChart draws all that lies between the axes.
 * Links and hover text have no place in a PNG.
 */
public final class XChartPainter {

    private static final double TITLE_LINE = 20;
    private static final int MARGIN = 10;
    private final int width;
    private final int height;
    private final int scale;

    /**
     * A painter for one size of paper.
     *
     * @param width in pixels at scale 1, from 280 to 4000
     * @param height in pixels at scale 1, up to 8000; a picture that does not fit is refused with the height it needs
     * @param scale image pixels for each of these; 2 for print
     */
    public XChartPainter(int width, int height, int scale) {
        if (width < 280 || width > 4000 || height < 120 || height > 8000 || scale < 1 || scale > 4) {
            throw new IllegalArgumentException("An image cannot be " + width + " by " + height + " pixels at scale "
                    + scale + ": give a width from 280 to 4000, a height from 120 to 8000 and a scale from 1 to 4.");
        }
        this.width = width;
        this.height = height;
        this.scale = scale;
    }

    /** The height in pixels that shows the picture well at a width, for callers that need not save space. */
    public static int naturalHeight(Picture picture, int width) {
        Layout layout = Layout.of(picture, width - 2 * MARGIN, OptionalDouble.empty());
        return (int) Math.ceil(layout.height() + titleHeight(picture, width)) + 2 * MARGIN;
    }

    private static double titleHeight(Picture picture, int width) {
        return titleLines(picture, width).size() * TITLE_LINE + 6;
    }

    private static List<String> titleLines(Picture picture, int width) {
        return Lettering.wrap(picture.title(), (width - 2 * MARGIN) * 0.85);
    }

    /** The picture as the bytes of a PNG file. */
    public byte[] paint(Picture picture) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            ImageIO.write(image(picture), "png", bytes);
        } catch (IOException e) {
            throw new UncheckedIOException("The picture '" + picture.id() + "' could not be written as PNG.", e);
        }
        return bytes.toByteArray();
    }

    BufferedImage image(Picture picture) {
        double top = titleHeight(picture, width);
        Layout layout = Layout.of(picture, width - 2 * MARGIN, OptionalDouble.of(height - top - 2 * MARGIN));
        BufferedImage image = new BufferedImage(width * scale, height * scale, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        try {
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
            g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
            g.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
            g.scale(scale, scale);
            g.setColor(Color.WHITE);
            g.fillRect(0, 0, width, height);
            g.translate(MARGIN, MARGIN);
            title(g, picture);
            g.translate(0, top);
            new XChartPlot(layout).paint(g);
            layout.key().forEach(sample -> sample.layer().read(new XChartKey(g, sample)));
            XChartLettering.paint(g, layout);
        } finally {
            g.dispose();
        }
        return image;
    }

    private void title(Graphics2D g, Picture picture) {
        g.setColor(Color.BLACK);
        g.setFont(new Font(Font.SANS_SERIF, Font.BOLD, 15));
        List<String> lines = titleLines(picture, width);
        for (int i = 0; i < lines.size(); i++) {
            g.drawString(lines.get(i), 0f, (float) (14 + i * TITLE_LINE));
        }
    }
}
