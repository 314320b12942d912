package wisp.statistics;

/**
 * Score and covariance of {@link GrayTest} in one stratum, by one walk through its event times.
 *
 * <p>Names follow Gray 1988: h_k(t) = n_k / S_k(t-) is the part of the modified risk set that censoring alone
 * explains, F0 the incidence under equality, a_gk the weight with which group k's martingale of the cause enters score
 * g, and c_gk its integral over dF0, by which it enters through F_k.
 */
final class GrayStratum {
    private final int k;
    private final double[] observed;
    private final double[] expected;
    private final double[] survivalBefore;
    private final double[] survival;
    private final double[] incidenceBefore;
    private final double[][] integral;
    private final double[] square;
    private final double[][] cross;
    private final double[][] direct;
    private double common;

    GrayStratum(GroupedRiskTable table) {
        k = table.atRisk().length;
        observed = new double[k];
        expected = new double[k];
        survivalBefore = ones(k);
        survival = ones(k);
        incidenceBefore = new double[k];
        integral = new double[k][k];
        square = new double[k];
        cross = new double[k][k];
        direct = new double[k][k];
        for (int i = 0; i < table.times().length; i++) {
            if (table.allEvents(1, i) + table.allEvents(2, i) > 0) {
                step(table, i);
            }
        }
    }

    double[] observed() {
        return observed;
    }

    double[] expected() {
        return expected;
    }

    double covariance(int g, int h) {
        double sum = direct[g][h];
        for (int j = 0; j < k; j++) {
            sum += integral[g][j] * integral[h][j] * square[j];
            sum += integral[g][j] * cross[h][j] + integral[h][j] * cross[g][j];
        }
        return sum;
    }

    private void step(GroupedRiskTable table, int i) {
        double own = table.allEvents(1, i);
        double[] reach = new double[k];
        double[] incidence = incidenceBefore.clone();
        double reachAll = 0;
        double modifiedAll = 0;
        for (int g = 0; g < k; g++) {
            double n = table.atRisk()[g][i];
            if (n > 0) {
                survival[g] = survivalBefore[g] * (n - table.events()[0][g][i] - table.events()[1][g][i]) / n;
                incidence[g] += survivalBefore[g] * table.events()[0][g][i] / n;
                reach[g] = n / survivalBefore[g];
                reachAll += reach[g];
                modifiedAll += reach[g] * (1 - incidenceBefore[g]);
            }
        }
        double commonAfter = common + own / reachAll;
        double[][] weight = new double[k][k];
        for (int g = 0; g < k; g++) {
            observed[g] += table.events()[0][g][i];
            expected[g] += reach[g] == 0 ? 0 : own * reach[g] * (1 - incidenceBefore[g]) / modifiedAll;
            for (int h = 0; h < k; h++) {
                weight[g][h] = reach[g] * ((g == h ? 1 : 0) - reach[h] / reachAll);
                integral[g][h] += weight[g][h] * own / (reachAll * (1 - common));
            }
        }
        for (int j = 0; j < k; j++) {
            if (reach[j] > 0 && own > 0) {
                double ties = own > 1 ? 1 - (own - 1) / (reachAll * survivalBefore[j] - 1) : 1;
                double share = ties * survivalBefore[j] * own / (reachAll * table.atRisk()[j][i]);
                double through = survival[j] > 0 ? 1 - (1 - commonAfter) / survival[j] : 1;
                ownCause(j, weight, through, share);
            }
            double others = table.events()[1][j][i];
            if (others > 0 && survival[j] > 0) {
                double n = table.atRisk()[j][i];
                double ties = others > 1 ? 1 - (others - 1) / (n - 1) : 1;
                double share = ties * survivalBefore[j] * survivalBefore[j] * others / (n * n);
                otherCause(j, (1 - commonAfter) / survival[j], share);
            }
        }
        common = commonAfter;
        System.arraycopy(incidence, 0, incidenceBefore, 0, k);
        System.arraycopy(survival, 0, survivalBefore, 0, k);
    }

    private void ownCause(int j, double[][] weight, double through, double share) {
        square[j] += through * through * share;
        for (int g = 0; g < k; g++) {
            double one = weight[g][j] - through * integral[g][j];
            cross[g][j] += one * through * share;
            for (int h = 0; h < k; h++) {
                direct[g][h] += one * (weight[h][j] - through * integral[h][j]) * share;
            }
        }
    }

    private void otherCause(int j, double through, double share) {
        square[j] += through * through * share;
        for (int g = 0; g < k; g++) {
            cross[g][j] -= through * integral[g][j] * through * share;
            for (int h = 0; h < k; h++) {
                direct[g][h] += through * integral[g][j] * through * integral[h][j] * share;
            }
        }
    }

    private static double[] ones(int k) {
        return RegressionData.constant(k, 1);
    }
}
