package wisp.statistics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * How groups with uncertain values rank: Laird &amp; Louis (1989) J Educ Stat 14:29; Goldstein &amp; Spiegelhalter
 * (1996) J R Stat Soc A 159:385.
 *
 * @param probabilityLargest for each group, the chance that its value is the largest of all; they add up to 1
 * @param expectedRank for each group, the mean of its rank, 1 for the largest
 */
public record PosteriorRanks(List<Double> probabilityLargest, List<Double> expectedRank) {

    private static final int POINTS_MAX = 40_000;

    private static final double EXACT = 1e-6;

    /**
     * One group's posterior on a scale that runs over all numbers.
     *
     * @param low where the distribution function is practically 0
     * @param high where it is practically 1
     * @param deviation standard deviation on that scale
     */
    record Posterior(
            DoubleUnaryOperator density, DoubleUnaryOperator distribution, double low, double high, double deviation) {}

    /** Every group alike. */
    static PosteriorRanks equal(int groups) {
        return new PosteriorRanks(
                Collections.nCopies(groups, 1.0 / groups), Collections.nCopies(groups, (groups + 1) / 2.0));
    }

    /**
     * Integrates over one common grid of equal steps. On a scale where densities are smooth and vanish at both ends the
     * trapezium rule errs less than any power of the step, so a third of the smallest deviation is ample.
     *
     * @throws CannotEstimate if the sizes are so far apart that the grid would be too coarse
     */
    static PosteriorRanks integrate(List<Posterior> posteriors) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        double step = 0.2;
        for (Posterior posterior : posteriors) {
            low = Math.min(low, posterior.low());
            high = Math.max(high, posterior.high());
            step = Math.min(step, posterior.deviation() / 3);
        }
        int points = (int) Math.min(POINTS_MAX, Math.ceil((high - low) / step)) + 1;
        double width = (high - low) / (points - 1);
        int groups = posteriors.size();
        double[] largest = new double[groups];
        double[] above = new double[groups];
        for (int point = 0; point < points; point++) {
            addPoint(posteriors, low + point * width, width, largest, above);
        }
        double chances = Arrays.stream(largest).sum();
        if (!(Math.abs(chances - 1) < EXACT)) {
            throw new CannotEstimate(
                    "The ranks of the groups",
                    "their sizes differ so much that the integration is not exact (the chances add up to " + chances
                            + ")");
        }
        List<Double> probabilities = new ArrayList<>(groups);
        List<Double> ranks = new ArrayList<>(groups);
        for (int i = 0; i < groups; i++) {
            probabilities.add(largest[i]);
            ranks.add(1 + above[i]);
        }
        return new PosteriorRanks(List.copyOf(probabilities), List.copyOf(ranks));
    }

    private static void addPoint(
            List<Posterior> posteriors, double at, double width, double[] largest, double[] above) {
        int groups = largest.length;
        double[] below = new double[groups];
        double[] productAfter = new double[groups + 1];
        productAfter[groups] = 1;
        double sum = 0;
        for (int i = groups - 1; i >= 0; i--) {
            below[i] = posteriors.get(i).distribution().applyAsDouble(at);
            productAfter[i] = productAfter[i + 1] * below[i];
            sum += below[i];
        }
        double productBefore = 1;
        for (int i = 0; i < groups; i++) {
            double mass = posteriors.get(i).density().applyAsDouble(at) * width;
            largest[i] += mass * productBefore * productAfter[i + 1];
            above[i] += mass * (groups - 1 - (sum - below[i]));
            productBefore *= below[i];
        }
    }
}
