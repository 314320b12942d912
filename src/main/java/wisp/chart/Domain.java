package wisp.chart;

import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/**
 * The stretch of one axis that a picture shows.
 *
 * <p>A fixed end is kept, except that it gives way to a dot, a bar, a curve or a reference line that would lie beyond
 * it; whiskers, bands and limit curves are cut there instead. A free end is found from all that is drawn and moved out
 * to the next labelled number; under curves only to the next fifth of a step, as width is scarce.
 *
 * @param low lower end
 * @param high upper end, above the lower one
 * @param log whether equal ratios are equally far apart
 */
record Domain(double low, double high, boolean log) {

    static Domain of(Picture picture, Along along, int ticks) {
        Axis axis = along == Along.X ? picture.x() : picture.y();
        Scale scale = axis.scale();
        Extent firm = Extent.of(picture, new Extent.Firm(along));
        Extent.Soft soft = new Extent.Soft(along);
        Extent all = firm.and(scale instanceof Scale.Log ? Extent.aboveZero(picture, soft) : Extent.of(picture, soft));
        if (scale instanceof Scale.Categories categories) {
            return categories(axis, categories, firm);
        }
        if (scale instanceof Scale.Log log) {
            return log(axis, log, firm, all);
        }
        if (scale instanceof Scale.Dates dates) {
            Extent seen = all.orElse(0, 1).widened(3);
            return ends(dates.low(), dates.high(), firm, seen.low(), seen.high(), false);
        }
        Scale.Linear linear = (Scale.Linear) scale;
        Extent seen = all.including(linear.low()).including(linear.high()).orElse(0, 1);
        Extent wide = seen.low() == seen.high() ? single(seen.low()) : seen;
        double step = Ticks.step(wide.high() - wide.low(), ticks, axis.format() == Format.COUNT);
        double round = along == Along.X && !picture.y().isCategories() ? step / 5 : step;
        double low = Math.floor(wide.low() / round + 1e-9) * round;
        double high = Math.ceil(wide.high() / round - 1e-9) * round;
        return ends(linear.low(), linear.high(), firm, low, high, false);
    }

    private static Domain categories(Axis axis, Scale.Categories categories, Extent firm) {
        int places = Math.max(1, categories.names().size());
        if (!firm.isEmpty() && (firm.low() < -0.5 || firm.high() > places - 0.5)) {
            throw new IllegalArgumentException("A mark stands at "
                    + (firm.low() < -0.5 ? firm.low() : firm.high()) + " on the axis '" + axis.label() + "', which has "
                    + places + " categories counted from 0: add the category to the axis.");
        }
        return new Domain(-0.5, places - 0.5, false);
    }

    private static Domain log(Axis axis, Scale.Log scale, Extent firm, Extent all) {
        if (!firm.isEmpty() && firm.low() <= 0) {
            throw new IllegalArgumentException("The log axis '" + axis.label() + "' cannot show " + firm.low()
                    + ": give values above zero, or take a linear axis.");
        }
        Extent seen = all.including(scale.low()).including(scale.high()).orElse(0.5, 2);
        double low = Ticks.logEnd(seen.low() == seen.high() ? seen.low() / 2 : seen.low(), false);
        double high = Ticks.logEnd(seen.low() == seen.high() ? seen.high() * 2 : seen.high(), true);
        return ends(scale.low(), scale.high(), firm, low, high, true);
    }

    private static Domain ends(
            OptionalDouble low, OptionalDouble high, Extent firm, double freeLow, double freeHigh, boolean log) {
        double from = low.isPresent() ? Math.min(low.getAsDouble(), firm.low()) : freeLow;
        double to = high.isPresent() ? Math.max(high.getAsDouble(), firm.high()) : freeHigh;
        return new Domain(from, to > from ? to : from + 1, log);
    }

    private static Extent single(double value) {
        double room = value == 0 ? 1 : Math.abs(value) / 2;
        return Extent.of(DoubleStream.of(value == 0 ? 0 : value - room, value + room));
    }

    boolean holds(double value) {
        return value >= low && value <= high;
    }

    double cut(double value) {
        return Math.max(low, Math.min(high, value));
    }
}
