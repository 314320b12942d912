package wisp.statistics;

import java.util.Arrays;

/**
 * The restricted cubic spline basis of a covariate: cubic between knots, linear beyond the outer ones.
 *
 * <p>Truncated-power form (Devlin and Weeks 1986; Harrell 2015, Regression Modeling Strategies, eq. 2.25), divided by
 * (tk - t1)^2 so that columns keep about the unit of x; agrees with R's {@code Hmisc::rcspline.eval(norm = 2)}.
 */
public final class RestrictedCubicSpline {
    private static final String WHAT = "The restricted cubic spline";
    private static final double[][] QUANTILES = {
        {.10, .5, .90},
        {.05, .35, .65, .95},
        {.05, .275, .5, .725, .95},
        {.05, .23, .41, .59, .77, .95},
        {.025, .1833, .3417, .5, .6583, .8167, .975}
    };

    private RestrictedCubicSpline() {}

    /**
     * The basis at each x: x itself and k - 2 cubic columns, for k ascending knots.
     *
     * @throws CannotEstimate when there are fewer than three knots, they do not ascend, or a number is not finite
     */
    public static double[][] basis(double[] x, double... knots) {
        if (knots.length < 3) {
            throw new CannotEstimate(WHAT, "it needs three knots or more and has " + knots.length);
        }
        for (int j = 0; j < knots.length; j++) {
            Require.finite(WHAT, "knot " + (j + 1), knots[j]);
            if (j > 0 && !(knots[j] > knots[j - 1])) {
                throw new CannotEstimate(WHAT, "its knots do not ascend: " + Arrays.toString(knots));
            }
        }
        double[][] basis = new double[x.length][];
        for (int i = 0; i < x.length; i++) {
            Require.finite(WHAT, "value " + (i + 1), x[i]);
            basis[i] = row(x[i], knots);
        }
        return basis;
    }

    /**
     * Knots at the quantiles that Harrell 2015, table 2.3, advises for 3 to 7 knots.
     *
     * @throws CannotEstimate when the number of knots is not 3 to 7, there are no values, or ties leave knots equal
     */
    public static double[] knots(double[] x, int count) {
        if (count < 3 || count > 7 || x.length == 0) {
            throw new CannotEstimate(WHAT, "it needs 3 to 7 knots, not " + count + ", and at least one value");
        }
        for (int i = 0; i < x.length; i++) {
            Require.finite(WHAT, "value " + (i + 1), x[i]);
        }
        double[] ascending = x.clone();
        Arrays.sort(ascending);
        double[] knots = new double[count];
        for (int j = 0; j < count; j++) {
            double at = QUANTILES[count - 3][j] * (x.length - 1);
            int below = (int) Math.floor(at);
            int above = Math.min(below + 1, x.length - 1);
            knots[j] = ascending[below] + (at - below) * (ascending[above] - ascending[below]);
            if (j > 0 && !(knots[j] > knots[j - 1])) {
                throw new CannotEstimate(WHAT, "ties leave no " + count + " distinct knots; take fewer");
            }
        }
        return knots;
    }

    private static double[] row(double x, double[] knots) {
        int k = knots.length;
        double last = knots[k - 1];
        double beforeLast = knots[k - 2];
        double norm = (last - knots[0]) * (last - knots[0]);
        double[] row = new double[k - 1];
        row[0] = x;
        for (int j = 0; j < k - 2; j++) {
            double lastShare = (beforeLast - knots[j]) / (last - beforeLast);
            double beforeShare = (last - knots[j]) / (last - beforeLast);
            row[j + 1] = (cube(x - knots[j]) - beforeShare * cube(x - beforeLast) + lastShare * cube(x - last)) / norm;
        }
        return row;
    }

    private static double cube(double x) {
        return x > 0 ? x * x * x : 0;
    }
}
