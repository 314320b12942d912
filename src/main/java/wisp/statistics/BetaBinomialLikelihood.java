package wisp.statistics;

import org.apache.commons.math3.util.CombinatoricsUtils;

/**
 * The beta-binomial likelihood of grouped counts in its mean μ and dispersion θ = 1/(α+β). Every factor of the products
 * over r occurs once for each group that reaches beyond r, so counting those groups once makes an evaluation cost as
 * much as the largest group, however many groups there are.
 */
final class BetaBinomialLikelihood {

    private final double logCoefficients;
    private final int[] casesBeyond;
    private final int[] othersBeyond;
    private final int[] membersBeyond;

    private BetaBinomialLikelihood(double logCoefficients, int[] cases, int[] others, int[] members) {
        this.logCoefficients = logCoefficients;
        this.casesBeyond = beyond(cases);
        this.othersBeyond = beyond(others);
        this.membersBeyond = beyond(members);
    }

    static BetaBinomialLikelihood of(int[] cases, int[] sizes) {
        int[] others = new int[cases.length];
        double logCoefficients = 0;
        for (int i = 0; i < cases.length; i++) {
            others[i] = sizes[i] - cases[i];
            logCoefficients += CombinatoricsUtils.binomialCoefficientLog(sizes[i], cases[i]);
        }
        return new BetaBinomialLikelihood(logCoefficients, cases, others, sizes);
    }

    /** How many of the counts are greater than r, for r from 0. */
    private static int[] beyond(int[] counts) {
        int max = 0;
        for (int count : counts) {
            max = Math.max(max, count);
        }
        int[] beyond = new int[max];
        for (int count : counts) {
            if (count > 0) {
                beyond[count - 1]++;
            }
        }
        for (int r = max - 2; r >= 0; r--) {
            beyond[r] += beyond[r + 1];
        }
        return beyond;
    }

    double log(double mean, double theta) {
        return logCoefficients
                + logs(casesBeyond, mean, theta)
                + logs(othersBeyond, 1 - mean, theta)
                - logs(membersBeyond, 1, theta);
    }

    /** Derivative of the log-likelihood by θ. */
    double slope(double mean, double theta) {
        return ratios(casesBeyond, mean, theta)
                + ratios(othersBeyond, 1 - mean, theta)
                - ratios(membersBeyond, 1, theta);
    }

    /** The mean of the largest likelihood at a given θ: the score falls in μ, so the root is the only one. */
    double meanAt(double theta) {
        return Quantile.root(
                mean -> inverses(casesBeyond, mean, theta) - inverses(othersBeyond, 1 - mean, theta), 1e-12, 1 - 1e-12);
    }

    private static double logs(int[] beyond, double start, double theta) {
        double sum = 0;
        for (int r = 0; r < beyond.length; r++) {
            sum += beyond[r] * Math.log(start + r * theta);
        }
        return sum;
    }

    private static double ratios(int[] beyond, double start, double theta) {
        double sum = 0;
        for (int r = 1; r < beyond.length; r++) {
            sum += beyond[r] * (r / (start + r * theta));
        }
        return sum;
    }

    private static double inverses(int[] beyond, double start, double theta) {
        double sum = 0;
        for (int r = 0; r < beyond.length; r++) {
            sum += beyond[r] / (start + r * theta);
        }
        return sum;
    }
}
