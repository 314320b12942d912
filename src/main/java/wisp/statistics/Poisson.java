package wisp.statistics;

/**
 * Poisson regression of counts on covariates with a known exposure, log link.
 *
 * <p>Fitted by iteratively reweighted least squares (McCullagh and Nelder 1989, section 6.2); agrees with R's
 * {@code glm(family = poisson, offset = log(exposure))}.
 */
public final class Poisson {
    private static final String WHAT = "The Poisson regression";

    private Poisson() {}

    /**
     * The fit of {@code counts[i]} over {@code exposure[i]}, such as time at risk.
     *
     * @throws CannotEstimate when there are no rows, a number is out of range, no event was counted, a column is a
     *     combination of others or the rows of some column have no event
     */
    public static RegressionFit fit(double[] counts, double[] exposure, double[][] design) {
        int n = counts.length;
        double[] offset = new double[n];
        double events = 0;
        if (exposure.length != n) {
            throw new CannotEstimate(WHAT, "there are " + exposure.length + " exposures for " + n + " counts");
        }
        for (int i = 0; i < n; i++) {
            if (!(counts[i] >= 0 && exposure[i] > 0) || !Double.isFinite(counts[i] + exposure[i])) {
                throw new CannotEstimate(WHAT, "row " + (i + 1) + " counts " + counts[i] + " over " + exposure[i]);
            }
            Require.size(WHAT, "a count", counts[i]);
            Require.size(WHAT, "an exposure", exposure[i]);
            offset[i] = Math.log(exposure[i]);
            events += counts[i];
        }
        Design.check(WHAT, design, n);
        if (events == 0) {
            throw new CannotEstimate(WHAT, "no event was counted");
        }
        RegressionData data = new RegressionData(design, counts, RegressionData.constant(n, 1), offset);
        NewtonFit newton = NewtonFit.free(RegressionFamily.POISSON, data, false);
        if (!newton.converged()) {
            throw new CannotEstimate(WHAT, "the rows of some column have no event, so its rate ratio has no bound");
        }
        return RegressionFit.of(RegressionFamily.POISSON, data, newton, false, "maximum likelihood");
    }
}
