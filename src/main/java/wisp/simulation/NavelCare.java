package wisp.simulation;

import java.util.List;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * How soon and with what a navel is treated: the delay is lognormal.
 *
 * @param medianMinutes by day in a calving pen
 * @param sigma standard deviation of the log delay
 * @param nightRatio what a birth at 22–06 h multiplies the median by
 * @param outsideRatio what a birth outside the calving pens multiplies it by
 * @param neverByDay probability that it is not treated at all, births at 06–22 h
 * @param neverByNight the same, 22–06 h
 * @param products what is used; none of them does better than another
 * @param sprayShare share sprayed rather than dipped; neither does better
 */
public record NavelCare(
        double medianMinutes,
        double sigma,
        double nightRatio,
        double outsideRatio,
        double neverByDay,
        double neverByNight,
        List<Product> products,
        double sprayShare) {
    /** A product, with its strength and how often it is used. */
    public record Product(String name, double concentrationPercent, double share) {}

    double median(boolean night, boolean outside) {
        return medianMinutes * (night ? nightRatio : 1) * (outside ? outsideRatio : 1);
    }

    double never(boolean night) {
        return night ? neverByNight : neverByDay;
    }

    /** The share of navels treated within so many minutes, of births by day or night, in or out of the pens. */
    public double treatedWithin(double minutes, boolean night, boolean outside) {
        double z = StrictMath.log(minutes / median(night, outside)) / sigma;
        return (1 - never(night)) * NormalDistribution.of(0, 1).cumulativeProbability(z);
    }
}
