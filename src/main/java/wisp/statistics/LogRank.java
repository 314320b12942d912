package wisp.statistics;

/**
 * The log-rank test of equal survival in k groups, and its Peto-Peto weighting, with or without strata.
 *
 * <p>At each event time with d events among n at risk, of whom ng in group g, the expected number there is d ng / n and
 * the covariance w^2 d (n - d) / (n - 1) ng / n (1[g = h] - nh / n); sums run over times and strata (Mantel 1966; Peto
 * and Peto 1972, J R Stat Soc A 135:185; Harrington and Fleming 1982, Biometrika 69:553). Weight w: 1, or the pooled
 * Kaplan-Meier survival of the stratum just before the time, as in R's {@code survdiff(rho = 1)}.
 */
public final class LogRank {
    private LogRank() {}

    /** The weight of each event time. */
    public enum Weight {
        /** Weight 1: log-rank, most powerful for proportional hazards. */
        LOG_RANK("log-rank test"),
        /** Weight S(t-): Peto-Peto, gives early events more say. */
        PETO_PETO("Peto-Peto test");

        private final String label;

        Weight(String label) {
            this.label = label;
        }
    }

    /** The log-rank test without strata; throws as {@link #stratified}. */
    public static CurveComparison of(double[] times, boolean[] events, int[] groups) {
        return stratified(times, events, groups, new int[times.length], Weight.LOG_RANK);
    }

    /**
     * The test within strata.
     *
     * @param groups the group of each life, any numbers
     * @param strata the stratum of each life, any numbers
     * @throws CannotEstimate when there are no observations, a time is negative or not a number, there is one group, or
     *     no event came while two groups were at risk
     */
    public static CurveComparison stratified(
            double[] times, boolean[] events, int[] groups, int[] strata, Weight weight) {
        String what = "The " + weight.label;
        GroupedRiskTable[] tables = GroupedRiskTable.of(what, times, RiskTable.causes(events), 1, groups, strata);
        int[] labels = GroupedRiskTable.labels(groups);
        double[] observed = new double[labels.length];
        double[] expected = new double[labels.length];
        double[][] covariance = new double[labels.length][labels.length];
        for (GroupedRiskTable table : tables) {
            add(table, weight, observed, expected, covariance);
        }
        String method = tables.length == 1 ? weight.label : "stratified " + weight.label;
        return CurveComparison.of(labels, observed, expected, covariance, method);
    }

    private static void add(
            GroupedRiskTable table, Weight weight, double[] observed, double[] expected, double[][] covariance) {
        double survival = 1;
        for (int i = 0; i < table.times().length; i++) {
            double d = table.allEvents(1, i);
            if (d == 0) {
                continue;
            }
            double n = table.allAtRisk(i);
            double w = weight == Weight.PETO_PETO ? survival : 1;
            double spread = n > 1 ? w * w * d * (n - d) / (n - 1) : 0;
            for (int g = 0; g < observed.length; g++) {
                double share = table.atRisk()[g][i] / n;
                observed[g] += w * table.events()[0][g][i];
                expected[g] += w * d * share;
                for (int h = 0; h < observed.length; h++) {
                    double other = table.atRisk()[h][i] / n;
                    covariance[g][h] += spread * share * ((g == h ? 1 : 0) - other);
                }
            }
            survival *= (n - d) / n;
        }
    }
}
