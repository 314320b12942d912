package wisp.statistics;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.decomposition.CholeskyDecomposition_F64;
import org.ejml.interfaces.linsol.LinearSolverDense;
import org.ejml.simple.SimpleMatrix;

/**
 * A symmetric positive definite matrix, scaled to unit diagonal before it is inverted so that the units of the columns
 * do not matter.
 */
final class Symmetric {
    private final double[] scale;
    private final SimpleMatrix inverse;
    private final double logDeterminant;

    private Symmetric(double[] scale, SimpleMatrix inverse, double logDeterminant) {
        this.scale = scale;
        this.inverse = inverse;
        this.logDeterminant = logDeterminant;
    }

    /** Factors the matrix; null when it is not positive definite. */
    static Symmetric of(double[][] matrix) {
        int p = matrix.length;
        double[] scale = new double[p];
        for (int j = 0; j < p; j++) {
            if (!(matrix[j][j] >= Double.MIN_NORMAL) || matrix[j][j] == Double.POSITIVE_INFINITY) {
                return null;
            }
            scale[j] = 1 / Math.sqrt(matrix[j][j]);
        }
        DMatrixRMaj unit = new DMatrixRMaj(p, p);
        for (int j = 0; j < p; j++) {
            for (int k = 0; k < p; k++) {
                unit.set(j, k, matrix[j][k] * scale[j] * scale[k]);
            }
        }
        CholeskyDecomposition_F64<DMatrixRMaj> cholesky = DecompositionFactory_DDRM.chol(p, true);
        if (!cholesky.decompose(unit.copy())) {
            return null;
        }
        DMatrixRMaj lower = cholesky.getT(null);
        double logDeterminant = 0;
        for (int j = 0; j < p; j++) {
            if (!(lower.get(j, j) >= 1e-8)) {
                return null;
            }
            logDeterminant += 2 * Math.log(lower.get(j, j) / scale[j]);
        }
        // Not SimpleMatrix.invert: for small matrices it works by cofactors and gives up where the factor does not
        LinearSolverDense<DMatrixRMaj> solver = LinearSolverFactory_DDRM.chol(p);
        solver.setA(unit);
        DMatrixRMaj inverse = new DMatrixRMaj(p, p);
        solver.invert(inverse);
        return new Symmetric(scale, SimpleMatrix.wrap(inverse), logDeterminant);
    }

    double logDeterminant() {
        return logDeterminant;
    }

    double[] solve(double[] right) {
        int p = scale.length;
        double[] solution = new double[p];
        for (int j = 0; j < p; j++) {
            for (int k = 0; k < p; k++) {
                solution[j] += inverse.get(j, k) * scale[j] * scale[k] * right[k];
            }
        }
        return solution;
    }

    double[][] inverse() {
        int p = scale.length;
        double[][] full = new double[p][p];
        for (int j = 0; j < p; j++) {
            for (int k = 0; k < p; k++) {
                full[j][k] = inverse.get(j, k) * scale[j] * scale[k];
            }
        }
        return full;
    }

    /** x' A x. */
    static double quadratic(double[] x, double[][] a) {
        double sum = 0;
        for (int j = 0; j < x.length; j++) {
            for (int k = 0; k < x.length; k++) {
                sum += x[j] * a[j][k] * x[k];
            }
        }
        return sum;
    }
}
