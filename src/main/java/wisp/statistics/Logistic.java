package wisp.statistics;

/**
 * Logistic regression by maximum likelihood, or by Firth's penalised likelihood where the outcome is separated.
 *
 * <p>Fitted by iteratively reweighted least squares (McCullagh and Nelder 1989, section 4.4). When some combination of
 * the columns divides cases from others completely or up to ties, the maximum lies at infinity (Albert and Anderson
 * 1984, Biometrika 71:1); the steps then run on along that combination, which is checked row by row, and the fit is
 * done again under Firth's penalty (Firth 1993, Biometrika 80:27; Heinze and Schemper 2002, Stat Med 21:2409). The
 * result says so in its method. Agrees with R's {@code glm(family = binomial)}, which in the separated case only warns.
 */
public final class Logistic {
    private static final String WHAT = "The logistic regression";

    /**
     * After how many steps to ask whether they run off: late enough that the rest has settled, and before probabilities
     * so near to 0 and 1 that rounding takes over the direction.
     */
    private static final int[] STEPS = {10, 12, 15, 18, 40};

    private Logistic() {}

    /**
     * The fit to single outcomes.
     *
     * @param outcomes whether each row is a case
     * @param design rows of covariates, the column of ones among them
     * @throws CannotEstimate when there are no rows, a number is not finite, the outcome does not vary or a column is a
     *     combination of others
     */
    public static RegressionFit fit(boolean[] outcomes, double[][] design) {
        return fitGrouped(zeroOne(outcomes), RegressionData.constant(outcomes.length, 1), design);
    }

    /** The fit to {@code cases[i]} of {@code trials[i]} in each row; throws as {@link #fit}. */
    public static RegressionFit fitGrouped(double[] cases, double[] trials, double[][] design) {
        RegressionData data = data(cases, trials, design);
        NewtonFit newton = null;
        for (int steps : STEPS) {
            newton = NewtonFit.within(steps, RegressionFamily.BINOMIAL, data);
            if (newton.converged()) {
                return RegressionFit.of(RegressionFamily.BINOMIAL, data, newton, false, "maximum likelihood");
            }
            if (separates(newton.lastStep(), data)) {
                return penalised(data, "Firth's penalised likelihood, because the columns separate the outcome");
            }
        }
        throw new CannotEstimate(WHAT, "the likelihood did not settle after " + newton.iterations() + " steps");
    }

    /** The fit to single outcomes under Firth's penalty, separated or not; throws as {@link #fit}. */
    public static RegressionFit firth(boolean[] outcomes, double[][] design) {
        double[] trials = RegressionData.constant(outcomes.length, 1);
        return penalised(data(zeroOne(outcomes), trials, design), "Firth's penalised likelihood");
    }

    private static RegressionFit penalised(RegressionData data, String method) {
        NewtonFit newton = NewtonFit.free(RegressionFamily.BINOMIAL, data, true);
        if (!newton.converged()) {
            throw new CannotEstimate(
                    WHAT, "the penalised likelihood did not settle after " + newton.iterations() + " steps");
        }
        return RegressionFit.of(RegressionFamily.BINOMIAL, data, newton, true, method);
    }

    private static RegressionData data(double[] cases, double[] trials, double[][] design) {
        if (cases.length != trials.length) {
            throw new CannotEstimate(WHAT, "there are " + cases.length + " case counts for " + trials.length + " rows");
        }
        double allCases = 0;
        double all = 0;
        for (int i = 0; i < cases.length; i++) {
            if (!(cases[i] >= 0 && cases[i] <= trials[i] && trials[i] > 0) || Double.isInfinite(trials[i])) {
                throw new CannotEstimate(WHAT, "row " + (i + 1) + " has " + cases[i] + " cases of " + trials[i]);
            }
            allCases += cases[i];
            all += trials[i];
        }
        Design.check(WHAT, design, cases.length);
        if (allCases == 0 || allCases == all) {
            throw new CannotEstimate(
                    WHAT, "the outcome does not vary: every row is " + (allCases == 0 ? "not a case" : "a case"));
        }
        return new RegressionData(design, cases, trials, new double[cases.length]);
    }

    /** Whether moving along the direction lowers no row's likelihood and raises some: a certificate of separation. */
    private static boolean separates(double[] direction, RegressionData data) {
        double largest = 0;
        double wrong = 0;
        for (int i = 0; i < data.response().length; i++) {
            double along = Design.dot(data.design()[i], direction);
            boolean someCases = data.response()[i] > 0;
            boolean someOthers = data.response()[i] < data.trials()[i];
            largest = Math.max(largest, Math.abs(along));
            if (someCases && along < 0 || someOthers && along > 0) {
                wrong = Math.max(wrong, Math.abs(along));
            }
        }
        return largest > 0.1 && wrong < 1e-3 * largest;
    }

    private static double[] zeroOne(boolean[] outcomes) {
        double[] cases = new double[outcomes.length];
        for (int i = 0; i < cases.length; i++) {
            cases[i] = outcomes[i] ? 1 : 0;
        }
        return cases;
    }
}
