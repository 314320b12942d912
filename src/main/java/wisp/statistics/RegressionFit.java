package wisp.statistics;

import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.exception.NoBracketingException;

/**
 * A fitted generalised linear model of canonical link.
 *
 * @param family distribution of the outcome
 * @param coefficients estimates and covariance (inverse Fisher information)
 * @param logLikelihood maximised log likelihood; under Firth's penalty with half the log determinant of the information
 * @param deviance twice the log likelihood that the saturated model has more, penalty left out
 * @param nullDeviance the deviance of one common probability or rate
 * @param pearson Pearson's chi-square of the residuals
 * @param iterations Newton steps taken
 * @param penalised whether Firth's penalty was used
 * @param data what it was fitted to
 */
public record RegressionFit(
        RegressionFamily family,
        Coefficients coefficients,
        double logLikelihood,
        double deviance,
        double nullDeviance,
        double pearson,
        int iterations,
        boolean penalised,
        RegressionData data) {

    /** Rows less columns. */
    public int residualDegreesOfFreedom() {
        return data.response().length - data.columns();
    }

    /** Akaike's information criterion. */
    public double aic() {
        return 2 * (data.columns() - logLikelihood);
    }

    /** Fitted probability (logistic) or count (Poisson) of each row. */
    public double[] fitted() {
        double[] fitted = new double[data.response().length];
        for (int i = 0; i < fitted.length; i++) {
            fitted[i] = family.mean(data.eta(i, coefficients.values()), data.trials()[i]) / data.trials()[i];
        }
        return fitted;
    }

    /**
     * The profile-likelihood interval of the {@code j}-th coefficient: the values at which twice the log likelihood,
     * maximised over the other coefficients, lies within the chi-square quantile of its maximum (Venzon and Moolgavkar
     * 1988, Appl Statist 37:87); of the penalised likelihood after Firth's penalty (Heinze and Schemper 2002, Stat Med
     * 21:2409).
     *
     * @throws CannotEstimate when the likelihood does not fall that far on one side, or the other coefficients do not
     *     settle there
     */
    public Interval profile(int j, double level) {
        double z = TwoSided.quantile(level);
        double low = limit(j, -z, z * z);
        double high = limit(j, z, z * z);
        String name = penalised ? "penalised profile likelihood" : "profile likelihood";
        return new Interval(coefficients.values()[j], low, high, level, name);
    }

    private double limit(int j, double z, double threshold) {
        double centre = coefficients.values()[j];
        double top = kernel();
        double[] start = coefficients.values().clone();
        UnivariateFunction excess = value -> {
            start[j] = value;
            NewtonFit held = NewtonFit.holding(family, data, penalised, start, j);
            if (held.converged()) {
                System.arraycopy(held.coefficients(), 0, start, 0, start.length);
            }
            return 2 * (top - held.logLikelihood()) - threshold;
        };
        double unit = z * coefficients.standardError(j);
        double inside = centre;
        for (double reach = 1; reach < 1e6; reach *= 1.5) {
            double outside = centre + reach * unit;
            if (excess.value(outside) > 0) {
                return crossing(excess, inside, outside, start, j);
            }
            inside = outside;
        }
        throw unbounded(j);
    }

    private double crossing(UnivariateFunction excess, double inside, double outside, double[] start, int j) {
        double accuracy = 1e-9 * Math.abs(coefficients.standardError(j));
        try {
            double limit = new BrentSolver(1e-12, accuracy)
                    .solve(200, excess, Math.min(inside, outside), Math.max(inside, outside));
            start[j] = limit;
            if (NewtonFit.holding(family, data, penalised, start, j).converged()) {
                return limit;
            }
        } catch (NoBracketingException wandered) {
            throw unbounded(j); // the other coefficients did not settle, so that the crossing cannot be told
        }
        throw unbounded(j);
    }

    private static CannotEstimate unbounded(int j) {
        return new CannotEstimate(
                "The profile interval of column " + (j + 1),
                "on one side the likelihood does not fall far enough, or the other coefficients do not settle");
    }

    private double kernel() {
        double constant = 0;
        for (int i = 0; i < data.response().length; i++) {
            constant += family.constant(data.response()[i], data.trials()[i]);
        }
        return logLikelihood - constant;
    }

    /** The fit written out from where Newton's steps ended. */
    static RegressionFit of(
            RegressionFamily family, RegressionData data, NewtonFit newton, boolean penalised, String method) {
        double[] b = newton.coefficients();
        int n = data.response().length;
        double constant = 0;
        double saturated = 0;
        double kernel = 0;
        double pearson = 0;
        for (int i = 0; i < n; i++) {
            double y = data.response()[i];
            double trials = data.trials()[i];
            double eta = data.eta(i, b);
            double mean = family.mean(eta, trials);
            constant += family.constant(y, trials);
            saturated += family.saturated(y, trials);
            kernel += family.logLikelihood(y, eta, trials);
            // A mean that has reached its bound has no variance and, at the maximum, no residual either
            pearson += y == mean ? 0 : (y - mean) * (y - mean) / family.variance(mean, trials);
        }
        return new RegressionFit(
                family,
                new Coefficients(b, newton.information().inverse(), method),
                newton.logLikelihood() + constant,
                2 * (saturated - kernel),
                2 * (saturated - nullKernel(family, data)),
                pearson,
                newton.iterations(),
                penalised,
                data);
    }

    private static double nullKernel(RegressionFamily family, RegressionData data) {
        double events = 0;
        double exposure = 0;
        for (int i = 0; i < data.response().length; i++) {
            events += data.response()[i];
            exposure += family == RegressionFamily.POISSON ? Math.exp(data.offset()[i]) : data.trials()[i];
        }
        double common = family == RegressionFamily.POISSON
                ? Math.log(events / exposure)
                : Math.log(events / (exposure - events));
        double kernel = 0;
        for (int i = 0; i < data.response().length; i++) {
            kernel += family.logLikelihood(data.response()[i], common + data.offset()[i], data.trials()[i]);
        }
        return kernel;
    }
}
