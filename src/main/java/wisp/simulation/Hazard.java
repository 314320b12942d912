package wisp.simulation;

import java.util.List;

/**
 * A hazard that is constant within bands of age and zero outside them.
 *
 * @param bands in order of age, none overlapping
 */
public record Hazard(List<Band> bands) {
    /**
     * One band of age.
     *
     * @param fromDay its start, days of exact age
     * @param toDay its end
     * @param perDay the hazard within it, per calf-day
     */
    public record Band(double fromDay, double toDay, double perDay) {}

    public Hazard {
        bands = List.copyOf(bands);
    }

    /** Bands from their edges: {@code from, hazard, from, hazard, …, end}. */
    static Hazard of(double... edges) {
        Band[] bands = new Band[edges.length / 2];
        for (int i = 0; i < bands.length; i++) {
            bands[i] = new Band(edges[2 * i], edges[2 * i + 2], edges[2 * i + 1]);
        }
        return new Hazard(List.of(bands));
    }

    /** The cumulative hazard over (from, to], days of age. */
    public double between(double from, double to) {
        double sum = 0;
        for (Band band : bands) {
            double inside = Math.min(to, band.toDay) - Math.max(from, band.fromDay);
            sum += inside > 0 ? inside * band.perDay : 0;
        }
        return sum;
    }

    /**
     * The age at which the cumulative hazard since {@code from}, times {@code ratio}, reaches {@code unit}; infinite
     * where it never does.
     *
     * @param unit a draw of the exponential distribution with mean 1
     */
    double reaches(double from, double ratio, double unit) {
        double left = unit / ratio;
        for (Band band : bands) {
            double start = Math.max(from, band.fromDay);
            double inside = band.toDay - start;
            if (inside <= 0) {
                continue;
            }
            if (left < inside * band.perDay) {
                return start + left / band.perDay;
            }
            left -= inside * band.perDay;
        }
        return Double.POSITIVE_INFINITY;
    }
}
