package wisp.statistics;

/**
 * Gray's test of equal cumulative incidence of one cause in k groups, with or without strata.
 *
 * <p>Compares the hazards of the subdistribution (Gray 1988, Ann Statist 16:1141, with rho = 0): in group g the
 * modified risk set is Rg = ng (1 - Fg(t-)) / Sg(t-), where Sg is the survival from all causes and Fg the incidence of
 * the cause, and events are compared with those expected in proportion to Rg. The covariance is that of Gray's section
 * 3 with the allowance for ties in his program {@code cmprsk::cuminc}, with which it agrees. All other causes compete
 * as one.
 */
public final class GrayTest {
    private static final String WHAT = "Gray's test";

    private GrayTest() {}

    /** The test without strata; throws as {@link #stratified}. */
    public static CurveComparison of(double[] times, int[] causes, int cause, int[] groups) {
        return stratified(times, causes, cause, groups, new int[times.length]);
    }

    /**
     * The test within strata.
     *
     * @param causes the cause of each life's exit, 0 for a censoring
     * @param cause the cause whose incidence is compared; every other one competes
     * @param groups the group of each life, any numbers
     * @param strata the stratum of each life, any numbers
     * @throws CannotEstimate when there are no observations, a time is negative or not a number, there is one group, or
     *     no event of the cause came while two groups were at risk
     */
    public static CurveComparison stratified(double[] times, int[] causes, int cause, int[] groups, int[] strata) {
        int[] ownOrOther = new int[causes.length];
        for (int i = 0; i < causes.length; i++) {
            ownOrOther[i] = causes[i] == 0 ? 0 : causes[i] == cause ? 1 : 2;
        }
        GroupedRiskTable[] tables = GroupedRiskTable.of(WHAT, times, ownOrOther, 2, groups, strata);
        int[] labels = GroupedRiskTable.labels(groups);
        int k = labels.length;
        double[] observed = new double[k];
        double[] expected = new double[k];
        double[][] covariance = new double[k][k];
        for (GroupedRiskTable table : tables) {
            GrayStratum stratum = new GrayStratum(table);
            for (int g = 0; g < k; g++) {
                observed[g] += stratum.observed()[g];
                expected[g] += stratum.expected()[g];
                for (int h = 0; h < k; h++) {
                    covariance[g][h] += stratum.covariance(g, h);
                }
            }
        }
        return CurveComparison.of(
                labels, observed, expected, covariance, tables.length == 1 ? "Gray test" : "stratified Gray test");
    }
}
