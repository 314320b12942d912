package wisp.simulation;

import java.util.List;

/**
 * How dirty a calf gets: log odds of a score of at least k are dirtiness of the place + {@code perDaySinceBedding} ×
 * days − {@code cuts[k]} (a proportional-odds model).
 *
 * @param cuts for scores of at least 1, 2 and 3
 * @param perDaySinceBedding log odds a day since the pen was bedded
 */
public record Cleanliness(List<Double> cuts, double perDaySinceBedding) {
    /** The probability of a score of at least this. */
    public double atLeast(int score, Place place, int daysSinceBedding) {
        if (score == 0) {
            return 1;
        }
        double logOdds = place.dirtiness() + perDaySinceBedding * daysSinceBedding - cuts.get(score - 1);
        return 1 / (1 + StrictMath.exp(-logOdds));
    }

    /** The probability of a score of at least 2, over the days between beddings. */
    public double dirty(Place place) {
        int days = Math.max(1, place.beddedEveryDays());
        double sum = 0;
        for (int day = 0; day < days; day++) {
            sum += atLeast(2, place, day);
        }
        return sum / days;
    }
}
