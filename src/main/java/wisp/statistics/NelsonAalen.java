package wisp.statistics;

/**
 * The Nelson-Aalen estimator of the cumulative hazard.
 *
 * <p>H(t) = sum over event times ti &lt;= t of di / ni, var H(t) = sum di / ni^2 (Nelson 1972, Technometrics 14:945;
 * Aalen 1978, Ann Statist 6:701; Klein and Moeschberger 2003, eq. 4.2.3-4.2.4). Agrees with R's {@code
 * survival::survfit} ({@code cumhaz}, {@code std.chaz}).
 */
public final class NelsonAalen {
    private NelsonAalen() {}

    /** The curve of lives observed from the origin, with 95 % intervals; throws as {@link #leftTruncated}. */
    public static CumulativeHazardCurve of(double[] times, boolean[] events) {
        return leftTruncated(new double[0], times, events, 0.95);
    }

    /**
     * The curve of lives under observation only after their entry: at risk over (entry, time]; entry 0 is the origin.
     *
     * @throws CannotEstimate when there are no observations, a time is negative or not a number, or an entry later than
     *     0 is not before its time
     */
    public static CumulativeHazardCurve leftTruncated(
            double[] entries, double[] times, boolean[] events, double level) {
        TwoSided.quantile(level);
        RiskTable table = RiskTable.of("The cumulative hazard", entries, times, RiskTable.causes(events), 1);
        int[] deaths = table.events()[0];
        double[] hazard = new double[deaths.length];
        double[] errors = new double[deaths.length];
        double sum = 0;
        double variance = 0;
        for (int i = 0; i < deaths.length; i++) {
            if (deaths[i] > 0) {
                double n = table.atRisk()[i];
                sum += deaths[i] / n;
                variance += deaths[i] / (n * n);
            }
            hazard[i] = sum;
            errors[i] = Math.sqrt(variance);
        }
        return new CumulativeHazardCurve(
                table.times(), table.atRisk(), deaths, table.censored(), hazard, errors, table.followUp(), level);
    }
}
