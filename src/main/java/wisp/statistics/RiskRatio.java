package wisp.statistics;

import java.util.function.DoubleUnaryOperator;

/**
 * The ratio of two risks, exposed over unexposed.
 *
 * <p>Zero cells, without adding a half to any:
 *
 * <ul>
 *   <li>no case in either group: the ratio is undefined and is refused by every method;
 *   <li>no exposed case: the ratio is 0. Katz's interval does not exist and is refused; the score interval runs from 0
 *       to a finite upper limit;
 *   <li>no unexposed case: the ratio and its upper limit are {@link Double#POSITIVE_INFINITY}, the score method's lower
 *       limit is finite; Katz's interval is refused;
 *   <li>everyone a case in both groups: the ratio is 1, Katz's standard error is 0 and is refused; the score interval
 *       exists (1/(1 + z²/n1) to 1 + z²/n2).
 * </ul>
 */
public final class RiskRatio {

    private static final String WHAT = "The risk ratio";

    /** How the interval is made. */
    public enum Method {
        /** Normal on the log scale: Katz, Baptista, Azen &amp; Pike (1978) Biometrics 34:469, method C. */
        KATZ_LOG("Katz log"),
        /** Score test turned round: Koopman (1984) Biometrics 40:513. */
        KOOPMAN_SCORE("Koopman score"),
        /**
         * Score with the variance times N/(N-1): Miettinen &amp; Nurminen (1985) Stat Med 4:213. What
         * statsmodels calls "score" with correction; slightly wider than Koopman's.
         */
        MIETTINEN_NURMINEN_SCORE("Miettinen-Nurminen score");

        private final String label;

        Method(String label) {
            this.label = label;
        }

        /** The name in {@link Interval#method()}. */
        public String label() {
            return label;
        }
    }

    private RiskRatio() {}

    /**
     * The risk ratio with its interval.
     *
     * @throws CannotEstimate if a group is empty, there is no case, the method does not exist for the table (see
     *     above), or the level is not in (0, 1)
     */
    public static Interval of(TwoByTwoTable table, double level, Method method) {
        table.requireBothGroups(WHAT);
        double z = Require.normalQuantile(WHAT, level);
        if (table.cases() == 0) {
            throw new CannotEstimate(WHAT, "there is no case in either group");
        }
        return switch (method) {
            case KATZ_LOG -> katzLog(table, level, z);
            case KOOPMAN_SCORE -> score(table, level, method, z);
            case MIETTINEN_NURMINEN_SCORE ->
                score(table, level, method, z * Math.sqrt(table.total() / (table.total() - 1.0)));
        };
    }

    private static Interval katzLog(TwoByTwoTable table, double level, double z) {
        double a = table.exposedCases();
        double c = table.unexposedCases();
        if (a == 0 || c == 0) {
            throw new CannotEstimate(
                    "The log interval of the risk ratio",
                    "a group has no case, so that the logarithm does not exist (the score method does)");
        }
        double variance = 1 / a - 1.0 / table.exposed() + 1 / c - 1.0 / table.unexposed();
        if (table.exposedOthers() == 0 && table.unexposedOthers() == 0) {
            throw new CannotEstimate(
                    "The log interval of the risk ratio",
                    "everyone in both groups is a case, so that its standard error is 0 (the score method exists)");
        }
        double ratio = table.exposedRisk() / table.unexposedRisk();
        double factor = Math.exp(z * Math.sqrt(variance));
        return new Interval(ratio, ratio / factor, ratio * factor, level, Method.KATZ_LOG.label());
    }

    private static Interval score(TwoByTwoTable table, double level, Method method, double z) {
        double ratio = table.exposedRisk() / table.unexposedRisk();
        double start = ratio == 0 || Double.isInfinite(ratio) ? 0 : Math.log(ratio);
        DoubleUnaryOperator aboveLow = log -> scoreStatistic(table, Math.exp(log)) - z;
        DoubleUnaryOperator belowHigh = log -> scoreStatistic(table, Math.exp(log)) + z;
        double low = ratio == 0 ? 0 : Math.exp(crossing(aboveLow, start));
        double high = Double.isInfinite(ratio) ? ratio : Math.exp(crossing(belowHigh, start));
        return new Interval(ratio, low, high, level, method.label());
    }

    /** The statistic falls as the ratio grows: search down where it is still negative, up where it is positive. */
    private static double crossing(DoubleUnaryOperator falling, double start) {
        return Quantile.rootBeyond(falling, start, falling.applyAsDouble(start) < 0 ? -0.5 : 0.5);
    }

    /** (p1 - θ p2) over its standard error at the maximum likelihood under p1 = θ p2. */
    private static double scoreStatistic(TwoByTwoTable table, double theta) {
        double n1 = table.exposed();
        double n2 = table.unexposed();
        double difference = table.exposedRisk() - theta * table.unexposedRisk();
        double b = theta * (n1 + table.unexposedCases()) + table.exposedCases() + n2;
        double ac = theta * (n1 + n2) * table.cases();
        // The smaller root of A p² - b p + cases, in the form that does not cancel.
        double p2 = 2.0 * table.cases() / (b + Math.sqrt(Math.max(0, b * b - 4 * ac)));
        double p1 = Math.min(1, theta * p2);
        double variance = p1 * (1 - p1) / n1 + theta * theta * p2 * Math.max(0, 1 - p2) / n2;
        return difference == 0 ? 0 : difference / Math.sqrt(variance);
    }
}
