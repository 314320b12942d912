package wisp.statistics;

import org.apache.commons.math3.special.Gamma;

/**
 * The distribution of the outcome in a generalised linear model, with its canonical link (McCullagh and Nelder 1989).
 */
public enum RegressionFamily {
    /** Cases of trials, logit link. */
    BINOMIAL {
        @Override
        double mean(double eta, double trials) {
            return trials / (1 + Math.exp(-eta));
        }

        @Override
        double at(double y, double eta, double trials, double[] meanVariance) {
            double e = Math.exp(-Math.abs(eta));
            double p = eta >= 0 ? 1 / (1 + e) : e / (1 + e);
            meanVariance[0] = trials * p;
            meanVariance[1] = trials * e / ((1 + e) * (1 + e));
            return y * eta - trials * (Math.max(eta, 0) + Math.log(1 + e));
        }

        @Override
        double link(double mean, double trials) {
            return Math.log(mean / (trials - mean));
        }

        @Override
        double inward(double y, double trials) {
            return trials * (y + 0.5) / (trials + 1);
        }

        @Override
        double variance(double mean, double trials) {
            return mean * (1 - mean / trials);
        }

        @Override
        double logLikelihood(double y, double eta, double trials) {
            // log(1 + e^eta) without overflow
            double softplus = Math.max(eta, 0) + Math.log1p(Math.exp(-Math.abs(eta)));
            return y * eta - trials * softplus;
        }

        @Override
        double constant(double y, double trials) {
            return trials == 1
                    ? 0
                    : Gamma.logGamma(trials + 1) - Gamma.logGamma(y + 1) - Gamma.logGamma(trials - y + 1);
        }

        @Override
        double saturated(double y, double trials) {
            return xLogX(y, trials) + xLogX(trials - y, trials);
        }
    },
    /** Counts, log link. */
    POISSON {
        @Override
        double mean(double eta, double trials) {
            return Math.exp(eta);
        }

        @Override
        double at(double y, double eta, double trials, double[] meanVariance) {
            double mean = Math.exp(eta);
            meanVariance[0] = mean;
            meanVariance[1] = mean;
            return y * eta - mean;
        }

        @Override
        double link(double mean, double trials) {
            return Math.log(mean);
        }

        @Override
        double inward(double y, double trials) {
            return y + 0.1;
        }

        @Override
        double variance(double mean, double trials) {
            return mean;
        }

        @Override
        double logLikelihood(double y, double eta, double trials) {
            return y * eta - Math.exp(eta);
        }

        @Override
        double constant(double y, double trials) {
            return -Gamma.logGamma(y + 1);
        }

        @Override
        double saturated(double y, double trials) {
            return xLogX(y, 1) - y;
        }
    };

    abstract double mean(double eta, double trials);

    /** Writes mean and variance at eta and returns the kernel of the log likelihood: one exponential for all three. */
    abstract double at(double y, double eta, double trials, double[] meanVariance);

    /** The linear predictor of a mean. */
    abstract double link(double mean, double trials);

    /** The outcome drawn off the bounds on which the link is infinite. */
    abstract double inward(double y, double trials);

    abstract double variance(double mean, double trials);

    /** The kernel of the log likelihood of one row: what depends on eta. */
    abstract double logLikelihood(double y, double eta, double trials);

    /** What the kernel leaves out. */
    abstract double constant(double y, double trials);

    /** The kernel at a mean equal to y. */
    abstract double saturated(double y, double trials);

    private static double xLogX(double x, double of) {
        return x == 0 ? 0 : x * Math.log(x / of);
    }
}
