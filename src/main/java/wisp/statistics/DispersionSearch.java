package wisp.statistics;

import java.util.function.DoubleUnaryOperator;

/**
 * Maximises a profile likelihood over a dispersion that may be 0. The slope is followed over a grid of the dispersion's
 * logarithm, each turn from rising to falling is a local maximum, and the best of them is held against no dispersion.
 */
final class DispersionSearch {

    private static final double SMALLEST = 1e-10;
    private static final double LARGEST = 1e8;
    private static final double STEP = 2;

    private DispersionSearch() {}

    /**
     * The dispersion of the largest profile likelihood, 0 when the boundary is the maximum.
     *
     * @param slope derivative of the profile log-likelihood by the dispersion
     * @param logLikelihood the profile log-likelihood, at 0 too
     */
    static double maximum(DoubleUnaryOperator slope, DoubleUnaryOperator logLikelihood) {
        double best = 0;
        double bestLogLikelihood = logLikelihood.applyAsDouble(0);
        double near = SMALLEST;
        double nearSlope = slope.applyAsDouble(near);
        for (double far = near * STEP; far < LARGEST; far *= STEP) {
            double farSlope = slope.applyAsDouble(far);
            if (nearSlope > 0 && farSlope <= 0) {
                double turn = Math.exp(
                        Quantile.root(log -> slope.applyAsDouble(Math.exp(log)), Math.log(near), Math.log(far)));
                double there = logLikelihood.applyAsDouble(turn);
                if (there > bestLogLikelihood) {
                    best = turn;
                    bestLogLikelihood = there;
                }
            }
            near = far;
            nearSlope = farSlope;
        }
        return best;
    }
}
