package wisp.statistics;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static wisp.statistics.ReferenceFile.assertClose;

import java.util.Arrays;
import org.apache.commons.math3.stat.regression.OLSMultipleLinearRegression;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SplineTest {

    @Test
    void restrictedBasisAgreesWithRcspline() {
        // R 4.2.2, Hmisc 4.8.0: rcspline.eval(0:10, knots = c(1, 3, 6, 9), inclx = TRUE, norm = 2)
        ReferenceFile file = ReferenceFile.read("restricted-cubic-spline-basis");
        same(
                file.matrix("expected/basis"),
                RestrictedCubicSpline.basis(file.numbers("input/x"), file.numbers("input/knots")));
    }

    @Test
    void naturalBasisAgreesWithNs() {
        // R 4.2.2: splines::ns(0:10, knots = c(3, 6), Boundary.knots = c(0, 10))
        ReferenceFile file = ReferenceFile.read("natural-cubic-spline-basis");
        same(
                file.matrix("expected/ns"),
                NaturalCubicSpline.basis(file.numbers("input/x"), file.numbers("input/knots"), 0, 10));
    }

    // No printed table of either basis was found in searching, so that the formula is worked by hand.
    @Test
    void restrictedBasisAgreesWithHarrellsFormulaByHand() {
        // Printed values quoted from memory:
        // Harrell 2015, eq. 2.25, knots 0, 1, 2 at x = 3: (27 - 2 * 8 + 1 * 1) / 4
        assertArrayEquals(new double[] {3, 12.0 / 4}, RestrictedCubicSpline.basis(new double[] {3}, 0, 1, 2)[0], 1e-12);
    }

    @Test
    void bothBasesSpanTheSameFunctions() {
        // Hastie, Tibshirani and Friedman 2009, section 5.2.1: K knots, boundary included, give K basis functions
        double[] x = {0, 0.5, 1, 2, 3, 4, 5.5, 6, 7, 8, 9.5, 10};
        double[][] natural = NaturalCubicSpline.basis(x, new double[] {3, 6}, 0, 10);
        double[][] restricted = RestrictedCubicSpline.basis(x, 0, 3, 6, 10);
        for (int column = 0; column < 3; column++) {
            int j = column;
            double[] y = Arrays.stream(restricted).mapToDouble(row -> row[j]).toArray();
            OLSMultipleLinearRegression fit = new OLSMultipleLinearRegression();
            fit.newSampleData(y, natural);
            assertEquals(0, fit.calculateResidualSumOfSquares(), 1e-16);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {-4, -1, 11, 15})
    void bothAreLinearBeyondTheOuterKnots(double x) {
        double[] three = {x - 0.5, x, x + 0.5};
        for (double[][] basis : new double[][][] {
            NaturalCubicSpline.basis(three, new double[] {3, 6}, 0, 10), RestrictedCubicSpline.basis(three, 0, 3, 6, 10)
        }) {
            for (int j = 0; j < basis[0].length; j++) {
                assertEquals(basis[1][j], (basis[0][j] + basis[2][j]) / 2, 1e-10);
            }
        }
    }

    @Test
    void knotsFollowHarrellsTable() {
        double[] x = new double[101];
        Arrays.setAll(x, i -> 100 - i);
        // Printed values quoted from memory:
        // Harrell 2015, table 2.3: 4 knots at .05, .35, .65, .95
        assertArrayEquals(new double[] {5, 35, 65, 95}, RestrictedCubicSpline.knots(x, 4), 1e-12);
        CannotEstimate ties = assertThrows(CannotEstimate.class, () -> RestrictedCubicSpline.knots(new double[9], 3));
        assertEquals(
                "The restricted cubic spline cannot be estimated because ties leave no 3 distinct knots; take fewer.",
                ties.getMessage());
    }

    @Test
    void knotsThatDoNotAscendAreRefused() {
        assertThrows(CannotEstimate.class, () -> RestrictedCubicSpline.basis(new double[] {1}, 1, 1, 2));
        assertThrows(CannotEstimate.class, () -> RestrictedCubicSpline.basis(new double[] {1}, 1, 2));
        assertThrows(CannotEstimate.class, () -> NaturalCubicSpline.basis(new double[] {1}, new double[] {11}, 0, 10));
        assertThrows(
                CannotEstimate.class,
                () -> NaturalCubicSpline.basis(new double[] {Double.NaN}, new double[] {3}, 0, 10));
    }

    private static void same(double[][] expected, double[][] actual) {
        for (int i = 0; i < expected.length; i++) {
            for (int j = 0; j < expected[i].length; j++) {
                assertClose(expected[i][j], actual[i][j], 1e-9, "row " + i + ", column " + j);
            }
        }
    }
}
