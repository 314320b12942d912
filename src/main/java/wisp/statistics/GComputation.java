package wisp.statistics;

/**
 * Marginal standardised risks by g-computation: the mean fitted risk if all were exposed and if none were.
 *
 * <p>Risks are averaged over the covariates as observed (Robins 1986; Hernan and Robins 2020, Causal Inference: What
 * If, section 13.3; Localio and others 2007, J Clin Epidemiol 60:874). Standard errors by the delta method from the
 * covariance of the coefficients, the covariates taken as fixed. They bear on causes only as far as the columns hold
 * every confounder.
 *
 * @param exposed mean risk if all were exposed, interval on the log odds scale
 * @param unexposed mean risk if none were, interval on the log odds scale
 * @param difference exposed less unexposed, normal interval
 * @param ratio exposed over unexposed, interval on the log scale
 */
public record GComputation(Interval exposed, Interval unexposed, Interval difference, Interval ratio) {
    private static final String WHAT = "The standardised risk";

    /**
     * The standardised risks of a logistic fit.
     *
     * @param coefficients of the fit, with whichever covariance is to be used (model or cluster-robust)
     * @param ifExposed the design with every row exposed
     * @param ifUnexposed the design with no row exposed
     * @param level confidence level
     * @throws CannotEstimate when there are no rows, a row is not as long as the coefficients or holds what is not a
     *     number, or a standardised risk is 0 or 1 to the last digit
     */
    public static GComputation of(
            Coefficients coefficients, double[][] ifExposed, double[][] ifUnexposed, double level) {
        double z = TwoSided.quantile(level);
        Risk one = Risk.mean(ifExposed, coefficients);
        Risk zero = Risk.mean(ifUnexposed, coefficients);
        int p = one.gradient.length;
        double[] difference = new double[p];
        double[] logRatio = new double[p];
        for (int j = 0; j < p; j++) {
            difference[j] = one.gradient[j] - zero.gradient[j];
            logRatio[j] = one.gradient[j] / one.value - zero.gradient[j] / zero.value;
        }
        double[][] covariance = coefficients.covariance();
        double apart = one.value - zero.value;
        double half = z * Math.sqrt(Symmetric.quadratic(difference, covariance));
        double ratio = one.value / zero.value;
        double factor = Math.exp(z * Math.sqrt(Symmetric.quadratic(logRatio, covariance)));
        String method = "g-computation, delta method, " + coefficients.method();
        return new GComputation(
                one.interval(covariance, z, level, method),
                zero.interval(covariance, z, level, method),
                new Interval(apart, Math.max(-1, apart - half), Math.min(1, apart + half), level, method),
                new Interval(ratio, ratio / factor, ratio * factor, level, method));
    }

    private record Risk(double value, double[] gradient) {

        static Risk mean(double[][] design, Coefficients coefficients) {
            if (design.length == 0) {
                throw new CannotEstimate(WHAT, "there are no rows to average over");
            }
            double sum = 0;
            double[] gradient = new double[coefficients.values().length];
            Design.checkRows(WHAT, design, gradient.length);
            for (double[] row : design) {
                double eta = Design.dot(row, coefficients.values());
                double p = RegressionFamily.BINOMIAL.mean(eta, 1);
                sum += p / design.length;
                for (int j = 0; j < gradient.length; j++) {
                    gradient[j] += row[j] * p * (1 - p) / design.length;
                }
            }
            if (!(sum > 0 && sum < 1)) {
                throw new CannotEstimate(WHAT, "it is " + sum + " to the last digit, so that no interval exists");
            }
            return new Risk(sum, gradient);
        }

        Interval interval(double[][] covariance, double z, double level, String method) {
            double se = Math.sqrt(Symmetric.quadratic(gradient, covariance));
            double[] limits = CurveInterval.LOGIT.limits(value, se, z);
            return new Interval(value, limits[0], limits[1], level, method);
        }
    }
}
