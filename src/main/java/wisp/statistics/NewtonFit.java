package wisp.statistics;

/**
 * Fits a generalised linear model of canonical link by Newton's steps, which here are those of iteratively reweighted
 * least squares, with or without Firth's penalty and with or without one coefficient held fixed.
 *
 * @param coefficients where the steps ended
 * @param information the Fisher information there
 * @param logLikelihood its kernel there, with half the log determinant of the information when penalised
 * @param lastStep the last step taken
 * @param iterations steps taken
 * @param converged whether the steps became negligible
 */
record NewtonFit(
        double[] coefficients,
        Symmetric information,
        double logLikelihood,
        double[] lastStep,
        int iterations,
        boolean converged) {
    private static final int STEPS_MAX = 30;
    private static final int FIRTH_STEPS_MAX = 500;
    private static final int NONE = -1;

    static NewtonFit free(RegressionFamily family, RegressionData data, boolean firth) {
        double[] start = firth ? new double[data.columns()] : nearOutcomes(family, data);
        return from(family, data, firth, start, NONE, firth ? FIRTH_STEPS_MAX : STEPS_MAX);
    }

    /** The unpenalised fit, given up after {@code steps} steps. */
    static NewtonFit within(int steps, RegressionFamily family, RegressionData data) {
        return from(family, data, false, nearOutcomes(family, data), NONE, steps);
    }

    /** Steps from {@code start}, leaving its {@code fixed}-th coefficient as it is. */
    static NewtonFit holding(RegressionFamily family, RegressionData data, boolean firth, double[] start, int fixed) {
        return from(family, data, firth, start, fixed, firth ? FIRTH_STEPS_MAX : STEPS_MAX);
    }

    private static NewtonFit from(
            RegressionFamily family, RegressionData data, boolean firth, double[] start, int fixed, int limit) {
        double[] reach = reach(data);
        State state = State.at(family, data, firth, start.clone());
        double[] step = new double[reach.length];
        for (int iteration = 1; iteration <= limit; iteration++) {
            double[] full = state.step(fixed);
            if (full == null) {
                return new NewtonFit(state.coefficients, state.factored, state.value, step, iteration, false);
            }
            step = firth ? shortened(full, reach) : full;
            State next = State.at(family, data, firth, moved(state.coefficients, step, 1));
            for (double share = 0.5; share > 1e-3 && !next.noWorseThan(state); share /= 2) {
                next = State.at(family, data, firth, moved(state.coefficients, step, share));
            }
            state = next;
            if (largest(step, reach) < 1e-9) {
                return new NewtonFit(state.coefficients, state.factored, state.value, step, iteration, true);
            }
        }
        return new NewtonFit(state.coefficients, state.factored, state.value, step, limit, false);
    }

    /** Where least squares of the outcomes, drawn a little inward and carried to the linear scale, would begin. */
    private static double[] nearOutcomes(RegressionFamily family, RegressionData data) {
        int p = data.columns();
        double[] right = new double[p];
        double[][] information = new double[p][p];
        for (int i = 0; i < data.response().length; i++) {
            double[] row = data.design()[i];
            double trials = data.trials()[i];
            double mean = family.inward(data.response()[i], trials);
            double weight = family.variance(mean, trials);
            double target = weight * (family.link(mean, trials) - data.offset()[i]);
            for (int j = 0; j < p; j++) {
                right[j] += row[j] * target;
                for (int k = 0; k < p; k++) {
                    information[j][k] += weight * row[j] * row[k];
                }
            }
        }
        Symmetric factored = Symmetric.of(information);
        return factored == null ? new double[p] : factored.solve(right);
    }

    /** Root mean square of each column, by which steps of different units are compared. */
    private static double[] reach(RegressionData data) {
        double[] reach = new double[data.columns()];
        for (double[] row : data.design()) {
            for (int j = 0; j < reach.length; j++) {
                reach[j] += row[j] * row[j];
            }
        }
        for (int j = 0; j < reach.length; j++) {
            reach[j] = Math.sqrt(reach[j] / data.design().length);
        }
        return reach;
    }

    private static double largest(double[] step, double[] reach) {
        double largest = 0;
        for (int j = 0; j < step.length; j++) {
            largest = Math.max(largest, Math.abs(step[j]) * reach[j]);
        }
        return largest;
    }

    private static double[] shortened(double[] step, double[] reach) {
        double share = Math.min(1, 5 / largest(step, reach));
        return share == 1 ? step : moved(new double[step.length], step, share);
    }

    private static double[] moved(double[] from, double[] step, double share) {
        double[] to = from.clone();
        for (int j = 0; j < to.length; j++) {
            to[j] += share * step[j];
        }
        return to;
    }

    /** Score, information and likelihood at one point. */
    private record State(
            double[] coefficients, double[] score, double[][] information, Symmetric factored, double value) {

        static State at(RegressionFamily family, RegressionData data, boolean firth, double[] coefficients) {
            int p = coefficients.length;
            double[] score = new double[p];
            double[][] information = new double[p][p];
            double[] meanVariance = new double[2];
            double value = 0;
            for (int i = 0; i < data.response().length; i++) {
                double[] row = data.design()[i];
                double trials = data.trials()[i];
                double eta = data.eta(i, coefficients);
                value += family.at(data.response()[i], eta, trials, meanVariance);
                double residual = data.response()[i] - meanVariance[0];
                double weight = meanVariance[1];
                for (int j = 0; j < p; j++) {
                    score[j] += row[j] * residual;
                    double weighted = weight * row[j];
                    double[] into = information[j];
                    for (int k = 0; k <= j; k++) {
                        into[k] += weighted * row[k];
                    }
                }
            }
            for (int j = 0; j < p; j++) {
                for (int k = 0; k < j; k++) {
                    information[k][j] = information[j][k];
                }
            }
            Symmetric factored = Symmetric.of(information);
            if (firth && factored != null) {
                modify(score, information, factored.inverse(), family, data, coefficients);
                value += factored.logDeterminant() / 2;
            }
            return new State(coefficients, score, information, factored, value);
        }

        /**
         * Firth's modified score: h (1/2 - p) is added to each residual, h the leverage of the row. That is the score
         * of h / 2 cases among h further trials, and steps by the information with those trials in it do not overshoot
         * as steps by the plain one may (Kosmidis and Firth 2009, Biometrika 96:793, section 4).
         */
        private static void modify(
                double[] score,
                double[][] stepInformation,
                double[][] inverse,
                RegressionFamily family,
                RegressionData data,
                double[] coefficients) {
            for (int i = 0; i < data.response().length; i++) {
                double[] row = data.design()[i];
                double trials = data.trials()[i];
                double mean = family.mean(data.eta(i, coefficients), trials);
                double leverage = family.variance(mean, trials) * Symmetric.quadratic(row, inverse);
                double p = mean / trials;
                for (int j = 0; j < score.length; j++) {
                    score[j] += row[j] * leverage * (0.5 - p);
                    for (int k = 0; k < score.length; k++) {
                        stepInformation[j][k] += leverage * p * (1 - p) * row[j] * row[k];
                    }
                }
            }
        }

        boolean noWorseThan(State before) {
            return value >= before.value - 1e-9 * Math.abs(before.value);
        }

        /** Newton's step; null when the information is singular. */
        double[] step(int fixed) {
            if (fixed == NONE) {
                Symmetric steps = factored == null ? null : Symmetric.of(information);
                return steps == null ? null : steps.solve(score);
            }
            double[][] held = new double[score.length][];
            for (int j = 0; j < held.length; j++) {
                held[j] = j == fixed ? new double[score.length] : information[j].clone();
                held[j][fixed] = 0;
            }
            held[fixed][fixed] = 1;
            double[] right = score.clone();
            right[fixed] = 0;
            Symmetric rest = Symmetric.of(held);
            return rest == null ? null : rest.solve(right);
        }
    }
}
