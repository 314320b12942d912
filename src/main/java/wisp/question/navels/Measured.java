package wisp.question.navels;

import java.util.function.Supplier;
import wisp.statistics.CannotEstimate;
import wisp.statistics.Interval;

/**
 * One quantity with its 95 % interval, or the reason why it cannot be had.
 *
 * @param interval null where it cannot be had
 * @param why a whole sentence, null where it can be had
 */
public record Measured(Interval interval, String why) {

    static Measured of(Supplier<Interval> estimate) {
        try {
            return new Measured(estimate.get(), null);
        } catch (CannotEstimate cannot) {
            return none(cannot.getMessage());
        }
    }

    /** The first estimate, or the second where the first does not exist. */
    static Measured of(Supplier<Interval> first, Supplier<Interval> second) {
        Measured measured = of(first);
        return measured.known() ? measured : of(second);
    }

    static Measured none(String why) {
        return new Measured(null, why);
    }

    /** Whether there is an estimate. */
    public boolean known() {
        return interval != null;
    }

    /** Whether there is an estimate with value and both limits finite. */
    public boolean finite() {
        return known()
                && Double.isFinite(interval.value())
                && Double.isFinite(interval.low())
                && Double.isFinite(interval.high());
    }

    /** Whether the whole interval lies on one side of a value. */
    public boolean excludes(double value) {
        return known() && (interval.low() > value || interval.high() < value);
    }
}
