package wisp.chart;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;

/**
 * One axis of a picture: its label with the unit, its scale, and how its numbers are written.
 *
 * @param label what is measured, with the unit, such as "Risk of navel illness (% of calves)"
 * @param scale how values become places
 * @param format how values become words
 */
public record Axis(String label, Scale scale, Format format) {

    public Axis {
        Words.require(label, "an axis label");
        Objects.requireNonNull(scale, "scale");
        Objects.requireNonNull(format, "format");
    }

    /** Even steps; both ends are found from what is drawn. */
    public static Axis linear(String label, Format format) {
        return new Axis(label, Scale.Linear.FREE, format);
    }

    /** Even steps from zero upwards; the upper end is found from what is drawn. */
    public static Axis fromZero(String label, Format format) {
        return new Axis(label, Scale.Linear.FREE.from(0), format);
    }

    /** Even ratios, for ratios and odds; both ends are found from what is drawn. */
    public static Axis log(String label, Format format) {
        return new Axis(label, Scale.Log.FREE, format);
    }

    /** Named places; the first is at the left, or at the top. */
    public static Axis categories(String label, List<String> names) {
        return new Axis(label, new Scale.Categories(names), Format.NUMBER);
    }

    /** Days; both ends are found from what is drawn. */
    public static Axis dates(String label) {
        return new Axis(label, Scale.Dates.FREE, Format.DATE);
    }

    /** The same axis with the scale's ends fixed, as small multiples need. */
    public Axis within(double low, double high) {
        return new Axis(label, scale.within(low, high), format);
    }

    /** Where a category stands: 0 for the first, 1 for the second. */
    public double at(String category) {
        int place = scale instanceof Scale.Categories c ? c.names().indexOf(category) : -1;
        if (place < 0) {
            throw new IllegalArgumentException(
                    "The axis '" + label + "' has no category '" + category + "': add it to the axis first.");
        }
        return place;
    }

    /** Where a day stands: the count of days since 1 January 1970. */
    public static double at(LocalDate day) {
        return day.toEpochDay();
    }

    /** Whether the axis has named places instead of numbers. */
    public boolean isCategories() {
        return scale instanceof Scale.Categories;
    }
}
