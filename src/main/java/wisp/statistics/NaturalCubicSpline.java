package wisp.statistics;

import java.util.Arrays;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * The natural cubic spline basis from B-splines: cubic between knots, linear beyond the boundary.
 *
 * <p>The cubic B-splines without the first are projected onto those combinations whose second derivative is 0 at both
 * boundary knots (Hastie 1992, in Chambers and Hastie, Statistical Models in S, section 7.6; B-splines by de Boor
 * 1978). Agrees column by column with R's {@code splines::ns}.
 */
public final class NaturalCubicSpline {
    private static final String WHAT = "The natural cubic spline";
    private static final int ORDER = 4;

    private NaturalCubicSpline() {}

    /**
     * The basis at each x: one column more than there are inner knots.
     *
     * @param inner knots between the boundary, ascending
     * @throws CannotEstimate when the knots do not ascend from {@code low} to {@code high} or a number is not finite
     */
    public static double[][] basis(double[] x, double[] inner, double low, double high) {
        Require.finite(WHAT, "the lower boundary", low);
        Require.finite(WHAT, "the upper boundary", high);
        for (double knot : inner) {
            Require.finite(WHAT, "a knot", knot);
        }
        double[] knots = knots(inner, low, high);
        RealMatrix ends = new Array2DRowRealMatrix(inner.length + 3, 2);
        ends.setColumn(0, tail(values(low, 2, knots)));
        // Negated: where a pivot is exactly 0 the library reflects the other way than R, and columns would differ
        ends.setColumnMatrix(1, new Array2DRowRealMatrix(tail(values(high, 2, knots))).scalarMultiply(-1));
        RealMatrix q = new QRDecomposition(ends).getQ();
        double[][] basis = new double[x.length][];
        for (int i = 0; i < x.length; i++) {
            Require.finite(WHAT, "value " + (i + 1), x[i]);
            double[] projected = q.preMultiply(tail(at(x[i], low, high, knots)));
            basis[i] = Arrays.copyOfRange(projected, 2, projected.length);
        }
        return basis;
    }

    private static double[] at(double x, double low, double high, double[] knots) {
        double inside = Math.max(low, Math.min(high, x));
        double[] value = values(inside, 0, knots);
        if (x != inside) {
            double[] slope = values(inside, 1, knots);
            for (int j = 0; j < value.length; j++) {
                value[j] += (x - inside) * slope[j];
            }
        }
        return value;
    }

    private static double[] knots(double[] inner, double low, double high) {
        double[] knots = new double[inner.length + 2 * ORDER];
        Arrays.fill(knots, 0, ORDER, low);
        System.arraycopy(inner, 0, knots, ORDER, inner.length);
        Arrays.fill(knots, inner.length + ORDER, knots.length, high);
        for (int j = ORDER; j < inner.length + ORDER + 1; j++) {
            if (!(knots[j] > knots[j - 1])) {
                throw new CannotEstimate(WHAT, "its knots do not ascend within " + low + " and " + high);
            }
        }
        return knots;
    }

    private static double[] tail(double[] values) {
        return Arrays.copyOfRange(values, 1, values.length);
    }

    /** The cubic B-splines, or a derivative of them, at x inside the boundary. */
    private static double[] values(double x, int derivative, double[] knots) {
        double[] values = new double[knots.length - ORDER];
        for (int j = 0; j < values.length; j++) {
            values[j] = spline(j, ORDER, derivative, x, knots);
        }
        return values;
    }

    /** de Boor's recurrence, the last interval closed on the right. */
    private static double spline(int j, int order, int derivative, double x, double[] knots) {
        if (order == 1) {
            boolean last = knots[j + 1] == knots[knots.length - 1] && x == knots[j + 1] && knots[j] < knots[j + 1];
            return knots[j] <= x && x < knots[j + 1] || last ? 1 : 0;
        }
        double left = knots[j + order - 1] - knots[j];
        double right = knots[j + order] - knots[j + 1];
        double low = left == 0 ? 0 : spline(j, order - 1, Math.max(0, derivative - 1), x, knots) / left;
        double high = right == 0 ? 0 : spline(j + 1, order - 1, Math.max(0, derivative - 1), x, knots) / right;
        return derivative > 0 ? (order - 1) * (low - high) : (x - knots[j]) * low + (knots[j + order] - x) * high;
    }
}
