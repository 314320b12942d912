package wisp.statistics;

import java.util.stream.IntStream;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;

/**
 * The outcome of a test that the curves of several groups are one.
 *
 * @param groups the group labels, ascending
 * @param observed (weighted) events observed in each group
 * @param expected (weighted) events expected there under equality
 * @param covariance covariance matrix of observed less expected
 * @param chiSquare the statistic
 * @param degreesOfFreedom of its chi-square distribution
 * @param pValue P(chi-square at least as large)
 * @param method the textbook name of the test
 */
public record CurveComparison(
        int[] groups,
        double[] observed,
        double[] expected,
        double[][] covariance,
        double chiSquare,
        int degreesOfFreedom,
        double pValue,
        String method) {

    /** The quadratic form over all groups but one; groups that were never at risk beside others are left out. */
    static CurveComparison of(
            int[] groups, double[] observed, double[] expected, double[][] covariance, String method) {
        int[] used = IntStream.range(0, groups.length)
                .filter(g -> covariance[g][g] > 1e-12 * Math.max(1, expected[g]))
                .toArray();
        int df = used.length - 1;
        double[][] kept = new double[Math.max(0, df)][Math.max(0, df)];
        double[] score = new double[kept.length];
        for (int i = 0; i < df; i++) {
            score[i] = observed[used[i]] - expected[used[i]];
            for (int j = 0; j < df; j++) {
                kept[i][j] = covariance[used[i]][used[j]];
            }
        }
        Symmetric factored = df < 1 ? null : Symmetric.of(kept);
        if (factored == null) {
            throw new CannotEstimate("The " + method, "no event came while two groups or more were at risk");
        }
        double chiSquare = Symmetric.quadratic(score, factored.inverse());
        double pValue = ChiSquaredDistribution.of(df).survivalProbability(chiSquare);
        return new CurveComparison(groups, observed, expected, covariance, chiSquare, df, pValue, method);
    }
}
