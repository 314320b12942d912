package wisp.statistics;

import java.util.Arrays;

/**
 * What a regression was fitted to; the arrays are the caller's own, not copies.
 *
 * @param design rows of covariates, with the column of ones where the model has an intercept
 * @param response cases (logistic) or counts (Poisson), one a row
 * @param trials of which the cases are counted (logistic), 1 a row for single outcomes
 * @param offset known part of the linear predictor, such as log time at risk
 */
public record RegressionData(double[][] design, double[] response, double[] trials, double[] offset) {

    int columns() {
        return design[0].length;
    }

    double eta(int i, double[] coefficients) {
        return offset[i] + Design.dot(design[i], coefficients);
    }

    static double[] constant(int n, double value) {
        double[] values = new double[n];
        Arrays.fill(values, value);
        return values;
    }
}
