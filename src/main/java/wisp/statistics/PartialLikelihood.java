package wisp.statistics;

import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * Cox's partial likelihood of lives in strata, walked from the last time to the first so that risk sets only grow.
 *
 * @param times of the lives, by stratum and then from last to first
 * @param strata in that order
 * @param events in that order
 * @param design covariates in that order, less their means
 * @param ties how tied events share the risk set
 */
record PartialLikelihood(double[] times, int[] strata, boolean[] events, double[][] design, CoxRegression.Ties ties) {

    /** Value and derivatives at one set of coefficients. */
    record Point(double[] coefficients, double logLikelihood, double[] score, double[][] information) {}

    static PartialLikelihood of(
            double[] times, boolean[] events, int[] strata, double[][] design, CoxRegression.Ties ties) {
        int n = times.length;
        int p = design[0].length;
        double[] means = new double[p];
        for (double[] row : design) {
            for (int j = 0; j < p; j++) {
                means[j] += row[j] / n;
            }
        }
        int[] order = IntStream.range(0, n)
                .boxed()
                .sorted(Comparator.<Integer>comparingInt(i -> strata[i])
                        .thenComparing(Comparator.<Integer>comparingDouble(i -> times[i])
                                .reversed()))
                .mapToInt(Integer::intValue)
                .toArray();
        PartialLikelihood sorted =
                new PartialLikelihood(new double[n], new int[n], new boolean[n], new double[n][p], ties);
        for (int k = 0; k < n; k++) {
            sorted.times[k] = times[order[k]];
            sorted.strata[k] = strata[order[k]];
            sorted.events[k] = events[order[k]];
            for (int j = 0; j < p; j++) {
                sorted.design[k][j] = design[order[k]][j] - means[j];
            }
        }
        return sorted;
    }

    /** How far a step moves the linear predictor, by the root mean square of each column. */
    double reach(double[] step) {
        double largest = 0;
        for (int j = 0; j < step.length; j++) {
            double square = 0;
            for (double[] row : design) {
                square += row[j] * row[j] / design.length;
            }
            largest = Math.max(largest, Math.abs(step[j]) * Math.sqrt(square));
        }
        return largest;
    }

    Point at(double[] coefficients) {
        int p = coefficients.length;
        Walk walk = new Walk(p);
        Sums atRisk = new Sums(p);
        int from = 0;
        while (from < times.length) {
            if (from > 0 && strata[from] != strata[from - 1]) {
                atRisk = new Sums(p);
            }
            int to = from;
            int deaths = 0;
            Sums dying = new Sums(p);
            while (to < times.length && strata[to] == strata[from] && times[to] == times[from]) {
                double eta = Design.dot(design[to], coefficients);
                atRisk.add(Math.exp(eta), design[to]);
                if (events[to]) {
                    deaths++;
                    dying.add(Math.exp(eta), design[to]);
                    walk.logLikelihood += eta;
                    for (int j = 0; j < p; j++) {
                        walk.score[j] += design[to][j];
                    }
                }
                to++;
            }
            for (int l = 0; l < deaths; l++) {
                walk.leave(atRisk, dying, ties == CoxRegression.Ties.EFRON ? (double) l / deaths : 0);
            }
            from = to;
        }
        return new Point(coefficients, walk.logLikelihood, walk.score, walk.information);
    }

    /** The likelihood and its derivatives as far as they have been added up. */
    private static final class Walk {
        private final double[] score;
        private final double[][] information;
        private double logLikelihood;

        Walk(int p) {
            score = new double[p];
            information = new double[p][p];
        }

        /** One event against the risk set less a share of those dying together. */
        void leave(Sums atRisk, Sums dying, double share) {
            double weight = atRisk.weight - share * dying.weight;
            logLikelihood -= Math.log(weight);
            for (int j = 0; j < score.length; j++) {
                double mean = (atRisk.first[j] - share * dying.first[j]) / weight;
                score[j] -= mean;
                for (int k = 0; k < score.length; k++) {
                    double other = (atRisk.first[k] - share * dying.first[k]) / weight;
                    double second = (atRisk.second[j][k] - share * dying.second[j][k]) / weight;
                    information[j][k] += second - mean * other;
                }
            }
        }
    }

    /** Weighted sums of ones, covariates and their products. */
    private static final class Sums {
        private final double[] first;
        private final double[][] second;
        private double weight;

        Sums(int p) {
            first = new double[p];
            second = new double[p][p];
        }

        void add(double w, double[] row) {
            weight += w;
            for (int j = 0; j < row.length; j++) {
                first[j] += w * row[j];
                for (int k = 0; k < row.length; k++) {
                    second[j][k] += w * row[j] * row[k];
                }
            }
        }
    }
}
