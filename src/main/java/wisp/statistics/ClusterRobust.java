package wisp.statistics;

import java.util.HashMap;
import java.util.Map;

/**
 * The cluster-robust (sandwich) covariance of regression coefficients, for rows that are alike within clusters.
 *
 * <p>V = c B (sum over clusters of u u') B, with B the inverse information and u the sum of a cluster's scores (Liang
 * and Zeger 1986, Biometrika 73:13). Same as R's {@code sandwich::vcovCL}. With few clusters (say under 40) it is too
 * small even when corrected; take the interval by Student's t on clusters - 1.
 */
public final class ClusterRobust {
    /** A robust variance smaller than the model's by this factor is rounding, not agreement. */
    private static final double RELATIVE_MIN = 1e-12;

    private ClusterRobust() {}

    /** The factor c that corrects for a small number of clusters. */
    public enum SmallSample {
        /** c = 1: HC0. */
        NONE("HC0"),
        /** c = g / (g - 1), for g clusters. */
        CLUSTERS("g/(g-1)"),
        /** c = g / (g - 1) (n - 1) / (n - k), for n rows and k columns: HC1. */
        CLUSTERS_AND_COLUMNS("HC1");

        private final String label;

        SmallSample(String label) {
            this.label = label;
        }

        double factor(int clusters, int rows, int columns) {
            double g = clusters / (clusters - 1.0);
            return switch (this) {
                case NONE -> 1;
                case CLUSTERS -> g;
                case CLUSTERS_AND_COLUMNS -> g * (rows - 1) / (rows - columns);
            };
        }
    }

    /**
     * The coefficients of the fit with the cluster-robust covariance.
     *
     * @param clusters the cluster of each row, any numbers
     * @throws CannotEstimate when the clusters are not one a row, are fewer than two, or leave no residual; a variance
     *     of 0 would give an interval without width
     */
    public static Coefficients of(RegressionFit fit, int[] clusters, SmallSample correction) {
        RegressionData data = fit.data();
        int n = data.response().length;
        int p = data.columns();
        if (clusters.length != n) {
            throw new CannotEstimate("The cluster-robust covariance", "the clusters are not one a row");
        }
        Map<Integer, double[]> scores = new HashMap<>();
        for (int i = 0; i < n; i++) {
            double mean = fit.family().mean(data.eta(i, fit.coefficients().values()), data.trials()[i]);
            double residual = data.response()[i] - mean;
            double[] sum = scores.computeIfAbsent(clusters[i], key -> new double[p]);
            for (int j = 0; j < p; j++) {
                sum[j] += residual * data.design()[i][j];
            }
        }
        if (scores.size() < 2) {
            throw new CannotEstimate("The cluster-robust covariance", "there is only one cluster");
        }
        double[][] bread = fit.coefficients().covariance();
        double factor = correction.factor(scores.size(), n, p);
        double[][] covariance = new double[p][p];
        for (double[] score : scores.values()) {
            double[] influence = new double[p];
            for (int j = 0; j < p; j++) {
                influence[j] = Design.dot(bread[j], score);
            }
            for (int j = 0; j < p; j++) {
                for (int k = 0; k < p; k++) {
                    covariance[j][k] += factor * influence[j] * influence[k];
                }
            }
        }
        for (int j = 0; j < p; j++) {
            if (!(covariance[j][j] > RELATIVE_MIN * bread[j][j])) {
                throw new CannotEstimate(
                        "The cluster-robust covariance", "the residuals of every cluster add up to 0, or nearly so");
            }
        }
        String method = fit.coefficients().method() + ", cluster-robust (" + correction.label + ", " + scores.size()
                + " clusters)";
        return new Coefficients(fit.coefficients().values(), covariance, method);
    }
}
