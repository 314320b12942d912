package wisp.statistics;

import java.util.Arrays;

/**
 * The proportional odds (cumulative logit) regression of an ordered outcome.
 *
 * <p>logit P(Y &lt;= k) = zeta_k - x b, so that a positive coefficient moves towards higher categories (McCullagh 1980,
 * J R Stat Soc B 42:109). Fitted by Newton's steps with the observed information. Agrees with R's {@code MASS::polr},
 * whose own covariance comes from a numerical Hessian and is good to about four digits.
 *
 * @param coefficients slopes b, one a column, followed by the thresholds zeta in ascending order
 * @param slopes how many of the coefficients are slopes
 * @param logLikelihood maximised log likelihood
 * @param observations sum of the weights
 */
public record ProportionalOdds(Coefficients coefficients, int slopes, double logLikelihood, double observations) {
    private static final String WHAT = "The proportional odds regression";
    private static final int STEPS_MAX = 100;

    /** Minus twice the log likelihood. */
    public double deviance() {
        return -2 * logLikelihood;
    }

    /** The thresholds zeta, ascending. */
    public double[] thresholds() {
        return Arrays.copyOfRange(coefficients.values(), slopes, coefficients.values().length);
    }

    /**
     * The fitted probability of each category for one row of covariates.
     *
     * @throws CannotEstimate when the row is not as long as the slopes are many, or holds what is not a number
     */
    public double[] probabilities(double[] row) {
        Design.checkRows("The probability of a category", new double[][] {row}, slopes);
        double[] zeta = thresholds();
        double eta = Design.dot(row, Arrays.copyOf(coefficients.values(), slopes));
        double[] probabilities = new double[zeta.length + 1];
        double below = 0;
        for (int k = 0; k < zeta.length; k++) {
            double upTo = RegressionFamily.BINOMIAL.mean(zeta[k] - eta, 1);
            probabilities[k] = upTo - below;
            below = upTo;
        }
        probabilities[zeta.length] = 1 - below;
        return probabilities;
    }

    /** The fit to single outcomes; throws as {@link #fitWeighted}. */
    public static ProportionalOdds fit(int[] categories, double[][] design) {
        return fitWeighted(categories, RegressionData.constant(categories.length, 1), design);
    }

    /**
     * The fit to rows that stand for {@code weights[i]} outcomes each.
     *
     * @param categories 0 to K - 1, ordered, each of them seen
     * @param design rows of covariates, without a column of ones: the thresholds stand for it
     * @throws CannotEstimate when there are no rows, fewer than two categories or an empty one, a number is out of
     *     range,
     *     a column is a combination of others, or the likelihood has no maximum
     */
    public static ProportionalOdds fitWeighted(int[] categories, double[] weights, double[][] design) {
        double[] counts = counts(categories, weights);
        Design.check(WHAT, Design.afterOnes(design), categories.length);
        int slopes = design[0].length;
        OrderedLikelihood at = OrderedLikelihood.at(categories, weights, design, start(counts, slopes), slopes);
        for (int iteration = 0; iteration < STEPS_MAX; iteration++) {
            Symmetric information = Symmetric.of(at.information());
            if (information == null) {
                break;
            }
            double[] step = information.solve(at.score());
            OrderedLikelihood next = null;
            for (double share = 1; share > 1e-6; share /= 2) {
                next = OrderedLikelihood.at(categories, weights, design, moved(at.parameters(), step, share), slopes);
                if (next != null && next.logLikelihood() >= at.logLikelihood() - 1e-9 * Math.abs(at.logLikelihood())) {
                    break;
                }
            }
            if (next == null) {
                break;
            }
            at = next;
            if (Arrays.stream(step).map(Math::abs).max().orElse(0) < 1e-10) {
                Coefficients fitted = new Coefficients(
                        at.parameters(), Symmetric.of(at.information()).inverse(), "maximum likelihood");
                return new ProportionalOdds(
                        fitted,
                        slopes,
                        at.logLikelihood(),
                        Arrays.stream(weights).sum());
            }
        }
        throw new CannotEstimate(WHAT, "the likelihood did not settle; a column may separate the categories");
    }

    private static double[] counts(int[] categories, double[] weights) {
        if (categories.length == 0) {
            throw new CannotEstimate(WHAT, "there are no observations");
        }
        if (weights.length != categories.length) {
            throw new CannotEstimate(WHAT, "the weights are not one a row");
        }
        double[] counts = new double[Math.max(0, Arrays.stream(categories).max().orElse(0)) + 1];
        for (int i = 0; i < categories.length; i++) {
            if (categories[i] < 0 || !(weights[i] >= 0) || Double.isInfinite(weights[i])) {
                throw new CannotEstimate(
                        WHAT, "row " + (i + 1) + " has category " + categories[i] + " and weight " + weights[i]);
            }
            counts[categories[i]] += weights[i];
        }
        for (int k = 0; k < counts.length; k++) {
            if (counts[k] == 0) {
                throw new CannotEstimate(WHAT, "category " + k + " was never seen; number those seen from 0 up");
            }
        }
        if (counts.length < 2) {
            throw new CannotEstimate(WHAT, "the outcome does not vary");
        }
        return counts;
    }

    /** No effect of any column, thresholds at the observed shares. */
    private static double[] start(double[] counts, int slopes) {
        double all = Arrays.stream(counts).sum();
        double[] start = new double[slopes + counts.length - 1];
        double below = 0;
        for (int k = 0; k < counts.length - 1; k++) {
            below += counts[k];
            start[slopes + k] = Math.log(below / (all - below));
        }
        return start;
    }

    private static double[] moved(double[] from, double[] step, double share) {
        double[] to = from.clone();
        for (int j = 0; j < to.length; j++) {
            to[j] += share * step[j];
        }
        return to;
    }
}
