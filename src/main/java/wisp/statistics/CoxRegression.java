package wisp.statistics;

import java.util.Arrays;

/**
 * Cox's proportional hazards regression of time to event, with or without strata.
 *
 * <p>Maximises the partial likelihood (Cox 1972, J R Stat Soc B 34:187) by Newton's steps. Tied event times by Efron
 * 1977 (J Am Stat Assoc 72:557), the better and R's choice, or Breslow 1974 (Biometrics 30:89). Agrees with R's
 * {@code survival::coxph}. The hazards of lives with different covariates are taken to stay proportional over time.
 *
 * @param coefficients log hazard ratios and their covariance
 * @param logLikelihood maximised log partial likelihood
 * @param nullLogLikelihood the same with all coefficients 0
 * @param iterations Newton steps taken
 */
public record CoxRegression(Coefficients coefficients, double logLikelihood, double nullLogLikelihood, int iterations) {
    private static final String WHAT = "The Cox regression";
    private static final int STEPS_MAX = 50;

    /** How tied event times share the risk set. */
    public enum Ties {
        /** Each tied event in turn takes its average share out of the risk set. */
        EFRON,
        /** All tied events face the whole risk set. */
        BRESLOW
    }

    /** Twice the log likelihood gained over all coefficients 0, to be held to chi-square on as many as there are. */
    public double likelihoodRatio() {
        return 2 * (logLikelihood - nullLogLikelihood);
    }

    /** The fit without strata, ties by Efron; throws as {@link #stratified}. */
    public static CoxRegression fit(double[] times, boolean[] events, double[][] design) {
        return stratified(times, events, new int[times.length], design, Ties.EFRON);
    }

    /**
     * The fit with a baseline hazard of its own in each stratum.
     *
     * @param strata the stratum of each life, any numbers
     * @param design rows of covariates, without a column of ones: the baseline stands for it
     * @throws CannotEstimate when there are no rows, a number is out of range, there is no event, a column is a
     *     combination of others, or the likelihood has no maximum
     */
    public static CoxRegression stratified(
            double[] times, boolean[] events, int[] strata, double[][] design, Ties ties) {
        RiskTable table = RiskTable.of(WHAT, new double[0], times, RiskTable.causes(events), 1);
        if (Arrays.stream(table.events()[0]).sum() == 0) {
            throw new CannotEstimate(WHAT, "there is no event");
        }
        if (strata.length != times.length) {
            throw new CannotEstimate(WHAT, "the strata are not one a life");
        }
        Design.check(WHAT, Design.afterOnes(design), times.length);
        PartialLikelihood likelihood = PartialLikelihood.of(times, events, strata, design, ties);
        PartialLikelihood.Point at = likelihood.at(new double[design[0].length]);
        double nullLogLikelihood = at.logLikelihood();
        for (int iteration = 1; iteration <= STEPS_MAX; iteration++) {
            Symmetric information = Symmetric.of(at.information());
            if (information == null) {
                break;
            }
            double[] step = information.solve(at.score());
            PartialLikelihood.Point next = likelihood.at(moved(at.coefficients(), step, 1));
            double worst = at.logLikelihood() - 1e-9 * Math.abs(at.logLikelihood());
            for (double share = 0.5; share > 1e-4 && !(next.logLikelihood() >= worst); share /= 2) {
                next = likelihood.at(moved(at.coefficients(), step, share));
            }
            at = next;
            if (likelihood.reach(step) < 1e-9) {
                double[][] covariance = Symmetric.of(at.information()).inverse();
                String method = "partial likelihood, ties by " + (ties == Ties.EFRON ? "Efron" : "Breslow");
                Coefficients fitted = new Coefficients(at.coefficients(), covariance, method);
                return new CoxRegression(fitted, at.logLikelihood(), nullLogLikelihood, iteration);
            }
        }
        throw new CannotEstimate(
                WHAT, "the likelihood did not settle: some column has no event on one side and no finite ratio");
    }

    private static double[] moved(double[] from, double[] step, double share) {
        double[] to = from.clone();
        for (int j = 0; j < to.length; j++) {
            to[j] += share * step[j];
        }
        return to;
    }
}
