package wisp.chart;

import java.util.List;
import java.util.OptionalDouble;

/**
 * Where everything of a picture goes on paper of a given width; both painters follow it.
 *
 * @param picture what is drawn; its axes may have been exchanged to give long names room
 * @param width of the whole, in pixels
 * @param height of the whole, in pixels
 * @param plot the space between the axes
 * @param x the horizontal axis on paper
 * @param y the vertical axis on paper
 * @param xTicks labelled places of the horizontal axis
 * @param yTicks labelled places of the vertical axis
 * @param dodge how layers in the same category stand side by side
 * @param markRoom the most that one category gives to its marks, in pixels
 * @param words all lettering
 * @param key the samples of the key
 * @param leaders the lines from dots to names that stand away from them
 */
record Layout(
        Picture picture,
        double width,
        double height,
        Box plot,
        Ruler x,
        Ruler y,
        List<Tick> xTicks,
        List<Tick> yTicks,
        Dodge dodge,
        double markRoom,
        List<Lettering> words,
        List<Key.Sample> key,
        List<Leader> leaders) {

    /** Below this width, category names go above their rows and the plot is lower. */
    static final double NARROW = 520;

    /** The layout at a width; the height follows from what is drawn unless it is given. */
    static Layout of(Picture picture, double width, OptionalDouble height) {
        Picture shown = picture;
        if (picture.x().isCategories() && !UprightSheet.namesFit(picture, width)) {
            shown = Turned.of(picture).orElse(picture);
        }
        Layout layout = shown.y().isCategories()
                ? new LevelSheet(shown, width).layout(height)
                : UprightSheet.layout(shown, width, height);
        if (picture.isEmpty()) {
            Box plot = layout.plot;
            double middle = (plot.left() + plot.right()) / 2;
            double base = (plot.top() + plot.bottom()) / 2 + 4.5;
            layout.words.add(Lettering.of(middle, base, Lettering.Anchor.MIDDLE, Lettering.Role.AXIS, "No data"));
        }
        return layout;
    }

    /** The place of a mark on paper, after stepping aside. */
    double markX(Layer layer, Mark mark) {
        return x.at(mark.x()) + (picture.x().isCategories() ? dodge.shift(layer) * unit(x) : 0);
    }

    /** The place of a mark on paper, after stepping aside. */
    double markY(Layer layer, Mark mark) {
        return y.at(mark.y()) + (picture.y().isCategories() ? dodge.shift(layer) * unit(y) : 0);
    }

    /** The space of one bar on paper. */
    Box bar(Bars layer, Mark mark) {
        boolean tall = layer.along() == Along.Y;
        Ruler value = tall ? y : x;
        Ruler other = tall ? x : y;
        double middle = tall ? markX(layer, mark) : markY(layer, mark);
        double half = Math.max(1, layer.width() * dodge.narrowing(layer) * unit(other) / 2 - 0.7);
        double end = value.at(tall ? mark.y() : mark.x());
        double from = Math.min(end, value.cut(0));
        double to = Math.max(end, value.cut(0));
        return tall ? new Box(middle - half, from, middle + half, to) : new Box(from, middle - half, to, middle + half);
    }

    private double unit(Ruler ruler) {
        return Math.min(markRoom, Math.abs(ruler.at(1) - ruler.at(0)));
    }
}
