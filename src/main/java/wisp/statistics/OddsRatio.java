package wisp.statistics;

/**
 * The ratio of two odds, exposed over unexposed.
 *
 * <p>Zero cells, without adding a half to any:
 *
 * <ul>
 *   <li>Woolf's logit interval does not exist with a zero cell and is refused, naming the exact one instead;
 *   <li>the conditional estimate at the edge of its support is 0 (lower limit 0) or {@link Double#POSITIVE_INFINITY}
 *       (upper limit infinite), the other limit is finite;
 *   <li>a table with an empty margin (no case, no non-case, or an empty group) has only one possible arrangement, says
 *       nothing of the odds ratio and is refused.
 * </ul>
 */
public final class OddsRatio {

    private static final String WHAT = "The odds ratio";

    /** How the estimate and the interval are made. */
    public enum Method {
        /** ad/bc, normal on the log scale: Woolf (1955) Ann Hum Genet 19:251. */
        WOOLF_LOGIT("Woolf logit"),
        /**
         * Conditional maximum likelihood of the noncentral hypergeometric distribution, exact limits by two one-sided
         * tests: Cornfield (1956), Fisher (1962). As R's {@code fisher.test}, so the value is not ad/bc.
         */
        FISHER_EXACT_CONDITIONAL("Fisher exact conditional"),
        /** The same with the observed table counted half in each tail; the value is median-unbiased. As epitools. */
        MID_P_EXACT("mid-p exact conditional");

        private final String label;

        Method(String label) {
            this.label = label;
        }

        /** The name in {@link Interval#method()}. */
        public String label() {
            return label;
        }
    }

    private OddsRatio() {}

    /**
     * The odds ratio with its interval.
     *
     * @throws CannotEstimate if a margin is empty, the method does not exist for the table (see above), or the level is
     *     not in (0, 1)
     */
    public static Interval of(TwoByTwoTable table, double level, Method method) {
        table.requireBothGroups(WHAT);
        Require.level(WHAT, level);
        if (table.cases() == 0 || table.cases() == table.total()) {
            throw new CannotEstimate(WHAT, "everyone has the same outcome, so that the table says nothing of it");
        }
        return switch (method) {
            case WOOLF_LOGIT -> woolf(table, level);
            case FISHER_EXACT_CONDITIONAL -> exact(table, level, method, 1);
            case MID_P_EXACT -> exact(table, level, method, 0.5);
        };
    }

    private static Interval woolf(TwoByTwoTable table, double level) {
        double a = table.exposedCases();
        double b = table.exposedOthers();
        double c = table.unexposedCases();
        double d = table.unexposedOthers();
        if (a == 0 || b == 0 || c == 0 || d == 0) {
            throw new CannotEstimate(
                    "The logit interval of the odds ratio",
                    "a cell of the table is 0, so that the logarithm does not exist (the exact method does)");
        }
        double ratio = a * d / (b * c);
        double z = Require.normalQuantile(WHAT, level);
        double factor = Math.exp(z * Math.sqrt(1 / a + 1 / b + 1 / c + 1 / d));
        return new Interval(ratio, ratio / factor, ratio * factor, level, Method.WOOLF_LOGIT.label());
    }

    private static Interval exact(TwoByTwoTable table, double level, Method method, double weight) {
        return exact(NoncentralHypergeometric.of(table), table.exposedCases(), level, method.label(), weight);
    }

    /** Estimate and limits from the distribution of the exposed cases, of one table or summed over strata. */
    static Interval exact(NoncentralHypergeometric cells, int a, double level, String method, double weight) {
        double tail = (1 - level) / 2;
        boolean lowest = a == cells.lowest();
        boolean highest = a == cells.highest();
        double value = lowest ? 0 : highest ? Double.POSITIVE_INFINITY : estimate(cells, a, weight);
        double low = lowest ? 0 : cells.oddsRatioWhere(odds -> cells.atLeast(a, weight, odds) - tail);
        double high =
                highest ? Double.POSITIVE_INFINITY : cells.oddsRatioWhere(odds -> tail - cells.atMost(a, weight, odds));
        return new Interval(value, low, high, level, method);
    }

    private static double estimate(NoncentralHypergeometric cells, int a, double weight) {
        return weight == 1
                ? cells.oddsRatioWhere(odds -> cells.mean(odds) - a)
                : cells.oddsRatioWhere(odds -> cells.atLeast(a, weight, odds) - 0.5);
    }
}
