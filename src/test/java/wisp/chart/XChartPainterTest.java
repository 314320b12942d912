package wisp.chart;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class XChartPainterTest {

    private static final XChartPainter PAINTER = new XChartPainter(480, 360, 1);

    static List<Picture> examples() {
        return Examples.all();
    }

    private static BufferedImage read(byte[] png) throws IOException {
        return ImageIO.read(new ByteArrayInputStream(png));
    }

    private static int[] pixels(Picture picture) {
        BufferedImage image = PAINTER.image(picture);
        return image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
    }

    @ParameterizedTest
    @MethodSource("examples")
    void anImageHasTheSizeAskedForAndIsAlwaysTheSame(Picture picture) throws IOException {
        int height = XChartPainter.naturalHeight(picture, 640);
        byte[] png = new XChartPainter(640, height, 2).paint(picture);
        BufferedImage image = read(png);
        assertEquals(1280, image.getWidth());
        assertEquals(2 * height, image.getHeight());
        assertArrayEquals(png, new XChartPainter(640, height, 2).paint(picture));
    }

    @Test
    void everyKindOfLayerChangesThePixels() {
        List<Layer> layers = EveryLayer.drawn();
        int[] all = pixels(EveryLayer.picture(layers.toArray(Layer[]::new)));
        for (int i = 0; i < layers.size(); i++) {
            String kind = layers.get(i).getClass().getSimpleName();
            assertFalse(Arrays.equals(all, pixels(EveryLayer.allBut(i))), kind + " leaves no trace");
        }
    }

    @Test
    void whiskersAndBandsChangeThePixels() {
        Mark bare = Mark.at(5, 0.5, "bare");
        Mark sure = bare.between(0.3, 0.8);
        assertFalse(Arrays.equals(
                pixels(EveryLayer.picture(new Points("", Ink.FIRST, Along.Y, List.of(bare)))),
                pixels(EveryLayer.picture(new Points("", Ink.FIRST, Along.Y, List.of(sure))))));
        assertFalse(Arrays.equals(
                pixels(EveryLayer.picture(new Bars("", Ink.FIRST, Along.Y, 1, List.of(bare)))),
                pixels(EveryLayer.picture(new Bars("", Ink.FIRST, Along.Y, 1, List.of(sure))))));
        List<Knot> line = List.of(Knot.at(1, 0.5), Knot.at(9, 0.5));
        List<Knot> band =
                List.of(Knot.at(1, 0.5).between(0.2, 0.8), Knot.at(9, 0.5).between(0.2, 0.8));
        assertFalse(Arrays.equals(
                pixels(EveryLayer.picture(new Curve("", Ink.FIRST, line))),
                pixels(EveryLayer.picture(new Curve("", Ink.FIRST, band)))));
        assertFalse(Arrays.equals(
                pixels(EveryLayer.picture(new Steps("", Ink.FIRST, line))),
                pixels(EveryLayer.picture(new Steps("", Ink.FIRST, band)))));
    }

    @Test
    void aDotLiesWhereTheLayoutSaysItDoes() {
        Picture picture = EveryLayer.picture(new Points("", Ink.FIRST, Along.Y, List.of(Mark.at(7, 0.25, "dot"))));
        // 10 pixels of margin on each side; one line of title, 20 pixels, with 6 below.
        Layout layout = Layout.of(picture, 460, OptionalDouble.of(360 - 26 - 20));
        int x = (int) Math.round(layout.x().at(7)) + 10;
        int y = (int) Math.round(layout.y().at(0.25)) + 10 + 26;
        assertEquals(
                InkMarker.colour(Ink.FIRST), new Color(PAINTER.image(picture).getRGB(x, y)));
    }

    @Test
    void everyInkHasItsOwnDot() {
        for (Ink one : Ink.values()) {
            for (Ink other : Ink.values()) {
                boolean same = Arrays.equals(dot(one), dot(other));
                assertEquals(one == other, same, one + " and " + other);
            }
        }
    }

    private static int[] dot(Ink ink) {
        return pixels(EveryLayer.picture(new Points("", ink, Along.Y, List.of(Mark.at(5, 0.5, "dot")))));
    }

    @Test
    void emptyLayersAndSinglePointsArePainted() {
        int[] empty = pixels(EveryLayer.picture(EveryLayer.empty().toArray(Layer[]::new)));
        assertTrue(Arrays.stream(empty).distinct().count() > 2);
        int[] axes = pixels(EveryLayer.picture());
        for (Layer layer : EveryLayer.single()) {
            assertFalse(Arrays.equals(axes, pixels(EveryLayer.picture(layer))), layer.toString());
        }
    }

    @Test
    void aHeightThatIsTooLowIsRefused() {
        XChartPainter low = new XChartPainter(480, 130, 1);
        String sentence = assertThrows(IllegalArgumentException.class, () -> low.paint(Examples.survival()))
                .getMessage();
        assertTrue(sentence.startsWith("The picture 'navel-free' does not fit a height of "), sentence);
        assertEquals(
                "An image cannot be 10 by 10 pixels at scale 1: give a width from 280 to 4000, a height from 120 to 8000"
                        + " and a scale from 1 to 4.",
                assertThrows(IllegalArgumentException.class, () -> new XChartPainter(10, 10, 1))
                        .getMessage());
    }
}
