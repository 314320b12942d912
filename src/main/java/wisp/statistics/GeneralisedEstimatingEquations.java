package wisp.statistics;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Logistic regression of clustered outcomes by generalised estimating equations with exchangeable working correlation.
 *
 * <p>Every two outcomes of a cluster are taken to have the same correlation alpha, estimated by moments from the
 * Pearson residuals without correction for the number of columns; the covariance is the robust one and holds even where
 * that is not so (Liang and Zeger 1986, Biometrika 73:13). Agrees with R's {@code geepack::geeglm}. Effects are
 * population averages. With few clusters (say under 40) take the interval by Student's t.
 *
 * @param coefficients log odds ratios with their robust covariance
 * @param correlation alpha
 * @param scale mean square of the Pearson residuals
 * @param clusters number of clusters
 * @param iterations steps taken
 */
public record GeneralisedEstimatingEquations(
        Coefficients coefficients, double correlation, double scale, int clusters, int iterations) {
    private static final String WHAT = "The estimating equations";
    private static final int STEPS_MAX = 100;

    /**
     * The fit to single outcomes.
     *
     * @param outcomes whether each row is a case
     * @param clusters the cluster of each row, any numbers, in any order
     * @param design rows of covariates, the column of ones among them
     * @throws CannotEstimate as {@link Logistic#fit}; also when the columns separate the outcome, there is one cluster,
     *     or
     *     no cluster has two rows
     */
    public static GeneralisedEstimatingEquations exchangeable(boolean[] outcomes, int[] clusters, double[][] design) {
        RegressionFit start = Logistic.fit(outcomes, design);
        if (start.penalised()) {
            throw new CannotEstimate(WHAT, "the columns separate the outcome");
        }
        if (clusters.length != outcomes.length) {
            throw new CannotEstimate(WHAT, "the clusters are not one a row");
        }
        int[][] members = members(clusters);
        if (members.length < 2 || Arrays.stream(members).allMatch(rows -> rows.length == 1)) {
            throw new CannotEstimate(WHAT, "there is only one cluster, or none with two rows");
        }
        double[] b = start.coefficients().values().clone();
        for (int iteration = 1; iteration <= STEPS_MAX; iteration++) {
            Equations equations = Equations.at(b, start.data(), members);
            Symmetric bread = Symmetric.of(equations.bread);
            if (bread == null) {
                break;
            }
            double[] step = bread.solve(equations.score);
            for (int j = 0; j < b.length; j++) {
                b[j] += step[j];
            }
            if (Arrays.stream(step).map(Math::abs).max().orElse(0) < 1e-11) {
                double[][] covariance = sandwich(bread.inverse(), equations.meat);
                Coefficients fitted =
                        new Coefficients(b, covariance, "GEE, exchangeable, robust, " + members.length + " clusters");
                return new GeneralisedEstimatingEquations(
                        fitted, equations.correlation, equations.scale, members.length, iteration);
            }
        }
        throw new CannotEstimate(WHAT, "they did not settle after " + STEPS_MAX + " steps");
    }

    private static int[][] members(int[] clusters) {
        Map<Integer, int[]> rows = new LinkedHashMap<>();
        Map<Integer, Integer> sizes = new LinkedHashMap<>();
        for (int cluster : clusters) {
            sizes.merge(cluster, 1, Integer::sum);
        }
        sizes.forEach((cluster, size) -> rows.put(cluster, new int[size]));
        Map<Integer, Integer> filled = new LinkedHashMap<>();
        for (int i = 0; i < clusters.length; i++) {
            int at = filled.merge(clusters[i], 1, Integer::sum) - 1;
            rows.get(clusters[i])[at] = i;
        }
        return rows.values().toArray(new int[0][]);
    }

    private static double[][] sandwich(double[][] bread, double[][] meat) {
        int p = bread.length;
        double[][] half = new double[p][p];
        double[][] whole = new double[p][p];
        for (int j = 0; j < p; j++) {
            for (int k = 0; k < p; k++) {
                half[j][k] = Design.dot(bread[j], meat[k]); // meat is symmetric
            }
        }
        for (int j = 0; j < p; j++) {
            for (int k = 0; k < p; k++) {
                whole[j][k] = Design.dot(half[j], bread[k]);
            }
        }
        return whole;
    }

    /** Score, its derivative and its outer products at one set of coefficients. */
    private record Equations(double[] score, double[][] bread, double[][] meat, double correlation, double scale) {

        static Equations at(double[] b, RegressionData data, int[][] members) {
            int n = data.response().length;
            double[] residual = new double[n];
            double[] deviation = new double[n];
            double squares = 0;
            for (int i = 0; i < n; i++) {
                double mean = RegressionFamily.BINOMIAL.mean(data.eta(i, b), 1);
                deviation[i] = Math.sqrt(mean * (1 - mean));
                residual[i] = (data.response()[i] - mean) / deviation[i];
                squares += residual[i] * residual[i];
            }
            double products = 0;
            double pairs = 0;
            for (int[] rows : members) {
                double sum = 0;
                double own = 0;
                for (int i : rows) {
                    sum += residual[i];
                    own += residual[i] * residual[i];
                }
                products += (sum * sum - own) / 2;
                pairs += rows.length * (rows.length - 1.0) / 2;
            }
            double scale = squares / n;
            double alpha = products / pairs / scale;
            int p = b.length;
            Equations equations = new Equations(new double[p], new double[p][p], new double[p][p], alpha, scale);
            for (int[] rows : members) {
                equations.add(rows, data, residual, deviation);
            }
            return equations;
        }

        /** Adds a cluster: the inverse of its exchangeable correlation is (I - c J) / (1 - alpha). */
        private void add(int[] rows, RegressionData data, double[] residual, double[] deviation) {
            int p = score.length;
            double c = correlation / (1 + (rows.length - 1) * correlation);
            double[] slope = new double[p];
            double[] own = new double[p];
            double sum = 0;
            for (int i : rows) {
                sum += residual[i];
                for (int j = 0; j < p; j++) {
                    double z = deviation[i] * data.design()[i][j];
                    slope[j] += z;
                    own[j] += z * residual[i];
                    for (int k = 0; k < p; k++) {
                        bread[j][k] += z * deviation[i] * data.design()[i][k] / (1 - correlation);
                    }
                }
            }
            for (int j = 0; j < p; j++) {
                own[j] = (own[j] - c * sum * slope[j]) / (1 - correlation);
                score[j] += own[j];
            }
            for (int j = 0; j < p; j++) {
                for (int k = 0; k < p; k++) {
                    bread[j][k] -= c * slope[j] * slope[k] / (1 - correlation);
                    meat[j][k] += own[j] * own[k];
                }
            }
        }
    }
}
