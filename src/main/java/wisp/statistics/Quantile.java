package wisp.statistics;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.statistics.distribution.BetaDistribution;
import org.apache.commons.statistics.distribution.GammaDistribution;

/**
 * Quantiles of the beta and gamma distributions to full relative accuracy. The library's inverse stops at an absolute
 * error of 1e-9, which is too coarse for a risk of one in ten thousand, so its distribution function is inverted here.
 */
final class Quantile {

    private static final int EVALUATIONS_MAX = 2000;

    private Quantile() {}

    /** The p-quantile of Beta(a, b). */
    static double beta(double p, double a, double b) {
        BetaDistribution beta = BetaDistribution.of(a, b);
        return p <= 0.5
                ? root(x -> beta.cumulativeProbability(x) - p, 0, 1)
                : root(x -> 1 - p - beta.survivalProbability(x), 0, 1);
    }

    /** The p-quantile of Gamma(shape) with rate 1. */
    static double gamma(double p, double shape) {
        GammaDistribution gamma = GammaDistribution.of(shape, 1);
        double high = shape + 1;
        while (gamma.cumulativeProbability(high) < p) {
            high *= 2;
        }
        return p <= 0.5
                ? root(x -> gamma.cumulativeProbability(x) - p, 0, high)
                : root(x -> 1 - p - gamma.survivalProbability(x), 0, high);
    }

    /** A root of a continuous function that changes sign between low and high. */
    static double root(DoubleUnaryOperator function, double low, double high) {
        return new BrentSolver(1e-14, 1e-300, 1e-300)
                .solve(EVALUATIONS_MAX, function::applyAsDouble, low, high, low + (high - low) / 2);
    }

    /**
     * A root reached from a start where the function has one sign, by steps that double until the sign turns.
     *
     * @param step the first step, negative to search downwards
     */
    static double rootBeyond(DoubleUnaryOperator function, double start, double step) {
        double sign = Math.signum(function.applyAsDouble(start));
        double near = start;
        double far = start + step;
        for (double reach = 2 * step; Math.signum(function.applyAsDouble(far)) == sign; reach *= 2) {
            if (Math.abs(far) > 1e6) {
                throw new CannotEstimate("The limit", "the search ran beyond " + far + " without meeting it");
            }
            near = far;
            far += reach;
        }
        return root(function, Math.min(near, far), Math.max(near, far));
    }
}
