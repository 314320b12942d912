package wisp.chart;

import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/**
 * Paints a picture as inline SVG: real text, links on marks, classes instead of colours.
 *
 * <p>{@code picture.css} gives the classes their colours, in light, dark and print. Letters are 13 pixels high in the
 * drawing's own units, so a drawing should be shown near the width that it was painted for. {@link #figure} therefore
 * holds two: one painted at 340 for phones, one at 720 for anything wider; the style sheet shows the one that fits its
 * container and hides the other from eye and screen reader alike.
 *
 * <p>A picture without links is one image ({@code role="img"}) with title and description. One with links is a group,
 * its axis lettering hidden from screen readers, each link named with its mark's label and values.
 */
public final class SvgPainter {

    /** Width for phones. */
    public static final int NARROW = 340;
    /** Width for anything wider. */
    public static final int WIDE = 720;

    private final int width;

    /**
     * A painter for one width.
     *
     * @param width of the drawing in its own pixels, from 280 to 2000
     */
    public SvgPainter(int width) {
        if (width < 280 || width > 2000) {
            throw new IllegalArgumentException(
                    "A drawing cannot be " + width + " pixels wide: give a width from 280 to 2000.");
        }
        this.width = width;
    }

    /** The picture as a figure with its title as caption, holding a narrow and a wide drawing. */
    public static String figure(Picture picture) {
        return "<figure class=\"picture-frame\">\n<figcaption>" + Xml.text(picture.title())
                + "</figcaption>\n<div class=\"picture-narrow\">\n" + new SvgPainter(NARROW).paint(picture)
                + "</div>\n<div class=\"picture-wide\">\n" + new SvgPainter(WIDE).paint(picture)
                + "</div>\n</figure>\n";
    }

    /** The picture as one SVG element. */
    public String paint(Picture picture) {
        Layout layout = Layout.of(picture, width, OptionalDouble.empty());
        String id = picture.id() + "-" + width;
        SvgLayers layers = new SvgLayers(layout, id + "-plot");
        String drawn = layout.picture().layers().stream()
                .map(layer -> layer.read(layers))
                .collect(Collectors.joining());
        return head(picture, layout, id)
                + clip(layout, id)
                + grid(layout)
                + drawn
                + "<g aria-hidden=\"true\">\n" + key(layout) + leaders(layout) + lettering(layout) + "</g>\n"
                + "</svg>\n";
    }

    private static String head(Picture picture, Layout layout, String id) {
        return ("<svg class=\"picture\" xmlns=\"http://www.w3.org/2000/svg\" width=\"%s\" height=\"%s\""
                        + " viewBox=\"0 0 %s %s\" role=\"%s\" aria-labelledby=\"%s-title\""
                        + " aria-describedby=\"%s-desc\">\n"
                        + "<title id=\"%s-title\">%s</title>\n<desc id=\"%s-desc\">%s</desc>\n")
                .formatted(
                        Xml.px(layout.width()),
                        Xml.px(layout.height()),
                        Xml.px(layout.width()),
                        Xml.px(layout.height()),
                        picture.hasLinks() ? "group" : "img",
                        id,
                        id,
                        id,
                        Xml.text(picture.title()),
                        id,
                        Xml.text(picture.alternative()));
    }

    private static String clip(Layout layout, String id) {
        return "<clipPath id=\"%s-plot\">%s</clipPath>\n".formatted(id, rect("", layout.plot()));
    }

    static String rect(String attributes, Box box) {
        return "<rect%s x=\"%s\" y=\"%s\" width=\"%s\" height=\"%s\"/>"
                .formatted(
                        attributes, Xml.px(box.left()), Xml.px(box.top()), Xml.px(box.width()), Xml.px(box.height()));
    }

    private static String grid(Layout layout) {
        Box plot = layout.plot();
        StringBuilder lines = new StringBuilder();
        if (!layout.picture().x().isCategories()) {
            layout.xTicks()
                    .forEach(tick -> lines.append("M")
                            .append(Xml.at(layout.x().at(tick.value()), plot.top()))
                            .append("V")
                            .append(Xml.px(plot.bottom())));
        }
        layout.yTicks()
                .forEach(tick -> lines.append("M")
                        .append(Xml.at(plot.left(), layout.y().at(tick.value())))
                        .append("H")
                        .append(Xml.px(plot.right())));
        return "<path class=\"grid\" d=\"" + lines + "\"/>\n<path class=\"edge\" d=\"M"
                + Xml.at(plot.left(), plot.bottom()) + "H" + Xml.px(plot.right()) + "\"/>\n";
    }

    private static String key(Layout layout) {
        return layout.key().stream()
                .map(sample -> sample.layer().read(new SvgKey(sample)))
                .collect(Collectors.joining());
    }

    private static String leaders(Layout layout) {
        String d = layout.leaders().stream()
                .map(line -> "M" + Xml.at(line.fromX(), line.fromY()) + "L" + Xml.at(line.toX(), line.toY()))
                .collect(Collectors.joining());
        return d.isEmpty() ? "" : SvgShape.path("leader", d) + "\n";
    }

    private static String lettering(Layout layout) {
        return layout.words().stream().map(SvgPainter::letters).collect(Collectors.joining());
    }

    private static String letters(Lettering words) {
        String anchor = switch (words.anchor()) {
            case START -> "";
            case MIDDLE -> " text-anchor=\"middle\"";
            case END -> " text-anchor=\"end\"";
        };
        String turn =
                words.upright() ? " transform=\"rotate(-90 " + Xml.px(words.x()) + " " + Xml.px(words.y()) + ")\"" : "";
        return "<text class=\"%s\" x=\"%s\" y=\"%s\"%s%s>%s</text>\n"
                .formatted(
                        words.role().name().toLowerCase(Locale.ROOT),
                        Xml.px(words.x()),
                        Xml.px(words.y()),
                        anchor,
                        turn,
                        Xml.text(words.text()));
    }
}
