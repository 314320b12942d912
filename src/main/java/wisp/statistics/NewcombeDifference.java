package wisp.statistics;

/**
 * The difference of two proportions with the hybrid score interval of Newcombe (1998) Stat Med 17:873, method 10
 * (without continuity correction): the reach on either side is put together from the two Wilson intervals (l1, u1) and
 * (l2, u2).
 *
 * <pre>d - √((p1-l1)² + (u2-p2)²),  d + √((u1-p1)² + (p2-l2)²)</pre>
 *
 * <p>It stays inside [-1, 1], and zero cells need no special treatment.
 */
public final class NewcombeDifference {

    /** The method's name in {@link Interval#method()}. */
    public static final String METHOD = "Newcombe hybrid score (method 10)";

    private static final String WHAT = "The risk difference";

    private NewcombeDifference() {}

    /**
     * The exposed group's risk less the unexposed group's.
     *
     * @throws CannotEstimate if a group is empty or the level is not in (0, 1)
     */
    public static Interval of(TwoByTwoTable table, double level) {
        table.requireBothGroups(WHAT);
        Require.level(WHAT, level);
        Interval first = WilsonInterval.of(table.exposedCases(), table.exposed(), level);
        Interval second = WilsonInterval.of(table.unexposedCases(), table.unexposed(), level);
        double difference = first.value() - second.value();
        double below = Math.hypot(first.value() - first.low(), second.high() - second.value());
        double above = Math.hypot(first.high() - first.value(), second.value() - second.low());
        return new Interval(difference, difference - below, difference + above, level, METHOD);
    }
}
