package wisp.statistics;

/**
 * The difference of two risks with the plain Wald interval, variance p1(1-p1)/n1 + p0(1-p0)/n0 (Rothman &amp; Greenland
 * 1998, ch. 14). It covers poorly in small groups and is degenerate with risks of 0 or 1;
 * {@link NewcombeDifference} is the one to report, this one is there to compare with other software.
 */
public final class RiskDifference {

    /** The method's name in {@link Interval#method()}. */
    public static final String METHOD = "Wald";

    private static final String WHAT = "The Wald interval of the risk difference";

    private RiskDifference() {}

    /**
     * The exposed group's risk less the unexposed group's.
     *
     * @throws CannotEstimate if a group is empty, both risks are 0 or 1 (the standard error would be 0), or the level
     *     is not in (0, 1)
     */
    public static Interval wald(TwoByTwoTable table, double level) {
        table.requireBothGroups(WHAT);
        double z = Require.normalQuantile(WHAT, level);
        double p1 = table.exposedRisk();
        double p0 = table.unexposedRisk();
        double variance = p1 * (1 - p1) / table.exposed() + p0 * (1 - p0) / table.unexposed();
        if (variance == 0) {
            throw new CannotEstimate(
                    WHAT, "in each group all or none are cases, so that its standard error is 0 (Newcombe's exists)");
        }
        double reach = z * Math.sqrt(variance);
        return new Interval(p1 - p0, p1 - p0 - reach, p1 - p0 + reach, level, METHOD);
    }
}
