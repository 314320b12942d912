package wisp.statistics;

import java.util.List;

/**
 * One measure over several strata, each stratum weighted as Mantel &amp; Haenszel (1959) J Natl Cancer Inst 22:719 do:
 * exposed against unexposed within strata, so that what varies between strata does not confound.
 *
 * <p>A stratum with one empty group, or (for the odds ratio) only one outcome, adds nothing and needs no care; a
 * stratum without anybody is refused, as it is likely a mistake. No half is ever added to a cell.
 */
public final class MantelHaenszel {

    private static final String RR = "The Mantel-Haenszel risk ratio";
    private static final String OR = "The Mantel-Haenszel odds ratio";
    private static final String RD = "The Mantel-Haenszel risk difference";
    private static final String TEST = "The Cochran-Mantel-Haenszel test";

    /** How the variance of the risk difference is estimated. */
    public enum DifferenceVariance {
        /** Sato (1989) Biometrics 45:1323: holds for many sparse strata and for few large ones. */
        SATO("Mantel-Haenszel, Sato variance"),
        /** Greenland &amp; Robins (1985) Biometrics 41:55: for few large strata. */
        GREENLAND_ROBINS("Mantel-Haenszel, Greenland-Robins variance");

        private final String label;

        DifferenceVariance(String label) {
            this.label = label;
        }

        /** The name in {@link Interval#method()}. */
        public String label() {
            return label;
        }
    }

    private MantelHaenszel() {}

    /**
     * The pooled risk ratio, log interval by Greenland &amp; Robins (1985) Biometrics 41:55.
     *
     * @throws CannotEstimate if there is no stratum, one is empty, no stratum has both groups, or all cases are on one
     *     side
     */
    public static Interval riskRatio(List<TwoByTwoTable> strata, double level) {
        double z = Require.normalQuantile(RR, level);
        double r = 0;
        double s = 0;
        double variance = 0;
        for (TwoByTwoTable t : requireStrata(RR, strata)) {
            double n1 = t.exposed();
            double n0 = t.unexposed();
            double n = t.total();
            r += t.exposedCases() * n0 / n;
            s += t.unexposedCases() * n1 / n;
            variance += (t.cases() * n1 * n0 - (double) t.exposedCases() * t.unexposedCases() * n) / (n * n);
        }
        requireBothSides(RR, r, s);
        double ratio = r / s;
        double factor = Math.exp(z * Math.sqrt(variance / (r * s)));
        return new Interval(ratio, ratio / factor, ratio * factor, level, "Mantel-Haenszel, Greenland-Robins variance");
    }

    /**
     * The pooled odds ratio, log interval by Robins, Breslow &amp; Greenland (1986) Biometrics 42:311.
     *
     * @throws CannotEstimate if there is no stratum, one is empty, no stratum is informative, or the ratio is 0 or
     *     infinite ({@link #exactOddsRatio} then exists)
     */
    public static Interval oddsRatio(List<TwoByTwoTable> strata, double level) {
        double z = Require.normalQuantile(OR, level);
        double r = 0;
        double s = 0;
        double pr = 0;
        double psqr = 0;
        double qs = 0;
        for (TwoByTwoTable t : requireStrata(OR, strata)) {
            double n = t.total();
            double ad = (double) t.exposedCases() * t.unexposedOthers() / n;
            double bc = (double) t.exposedOthers() * t.unexposedCases() / n;
            double p = ((double) t.exposedCases() + t.unexposedOthers()) / n;
            r += ad;
            s += bc;
            pr += p * ad;
            psqr += p * bc + (1 - p) * ad;
            qs += (1 - p) * bc;
        }
        requireBothSides(OR, r, s);
        double ratio = r / s;
        double variance = pr / (2 * r * r) + psqr / (2 * r * s) + qs / (2 * s * s);
        double factor = Math.exp(z * Math.sqrt(variance));
        return new Interval(
                ratio, ratio / factor, ratio * factor, level, "Mantel-Haenszel, Robins-Breslow-Greenland variance");
    }

    /**
     * The pooled risk difference with its Wald interval.
     *
     * @throws CannotEstimate if there is no stratum, one is empty, no stratum has both groups, or nothing varies
     */
    public static Interval riskDifference(List<TwoByTwoTable> strata, double level, DifferenceVariance method) {
        double z = Require.normalQuantile(RD, level);
        double weights = 0;
        double sum = 0;
        for (TwoByTwoTable t : requireStrata(RD, strata)) {
            double n1 = t.exposed();
            double n0 = t.unexposed();
            weights += n1 * n0 / t.total();
            sum += (t.exposedCases() * n0 - t.unexposedCases() * n1) / t.total();
        }
        if (weights == 0) {
            throw new CannotEstimate(RD, "no stratum has both groups");
        }
        double difference = sum / weights;
        double variance = switch (method) {
            case SATO -> sato(strata, difference);
            case GREENLAND_ROBINS -> greenlandRobins(strata);
        };
        if (!(variance > 0)) {
            throw new CannotEstimate(RD, "in each group of each stratum all or none are cases");
        }
        double reach = z * Math.sqrt(variance) / weights;
        return new Interval(difference, difference - reach, difference + reach, level, method.label());
    }

    private static double sato(List<TwoByTwoTable> strata, double difference) {
        double p = 0;
        double q = 0;
        for (TwoByTwoTable t : strata) {
            double a = t.exposedCases();
            double c = t.unexposedCases();
            double n1 = t.exposed();
            double n0 = t.unexposed();
            double n = t.total();
            p += (n1 * n1 * c - n0 * n0 * a + n1 * n0 * (n0 - n1) / 2) / (n * n);
            q += (a * (n0 - c) + c * (n1 - a)) / (2 * n);
        }
        return difference * p + q;
    }

    private static double greenlandRobins(List<TwoByTwoTable> strata) {
        double sum = 0;
        for (TwoByTwoTable t : strata) {
            double n1 = t.exposed();
            double n0 = t.unexposed();
            if (n1 > 0 && n0 > 0) {
                double first = (double) t.exposedCases() * t.exposedOthers() * n0 * n0 * n0;
                double second = (double) t.unexposedCases() * t.unexposedOthers() * n1 * n1 * n1;
                sum += (first + second) / (n1 * n0) / t.total() / t.total();
            }
        }
        return sum;
    }

    /**
     * The Cochran-Mantel-Haenszel chi-square of no association within strata, 1 degree of freedom.
     *
     * @param corrected with the continuity correction of a half, left out where the sum is within a half of its
     *     expectation (as R's {@code mantelhaen.test})
     * @throws CannotEstimate if there is no stratum, one is empty, or none is informative
     */
    public static TestResult chiSquare(List<TwoByTwoTable> strata, boolean corrected) {
        double distance = 0;
        double variance = 0;
        for (TwoByTwoTable t : requireStrata(TEST, strata)) {
            double n = t.total();
            double m = t.cases();
            distance += t.exposedCases() - t.exposed() * m / n;
            variance += n < 2 ? 0 : t.exposed() / n * t.unexposed() / n * m * (n - m) / (n - 1);
        }
        if (variance == 0) {
            throw new CannotEstimate(TEST, "no stratum has both groups and both outcomes");
        }
        double reach = Math.abs(distance) - (corrected && Math.abs(distance) >= 0.5 ? 0.5 : 0);
        String method = "Cochran-Mantel-Haenszel" + (corrected ? ", continuity corrected" : "");
        return TestResult.chiSquare(reach * reach / variance, 1, method);
    }

    /**
     * The common odds ratio by conditional maximum likelihood with exact limits (Gart 1970 Biometrika 57:471; as R's
     * {@code mantelhaen.test(exact = TRUE)}); 0 or infinite at the edge of the support, as {@link OddsRatio}.
     *
     * @throws CannotEstimate if there is no stratum, one is empty, or none is informative
     */
    public static Interval exactOddsRatio(List<TwoByTwoTable> strata, double level) {
        Require.level(OR, level);
        NoncentralHypergeometric sum = NoncentralHypergeometric.sum(requireStrata(OR, strata));
        if (sum.lowest() == sum.highest()) {
            throw new CannotEstimate(OR, "no stratum has both groups and both outcomes");
        }
        int a = strata.stream().mapToInt(TwoByTwoTable::exposedCases).sum();
        return OddsRatio.exact(sum, a, level, "exact conditional over strata", 1);
    }

    private static List<TwoByTwoTable> requireStrata(String what, List<TwoByTwoTable> strata) {
        if (strata.isEmpty()) {
            throw new CannotEstimate(what, "there is no stratum");
        }
        for (int i = 0; i < strata.size(); i++) {
            if (strata.get(i).total() == 0) {
                throw new CannotEstimate(what, "stratum " + (i + 1) + " has nobody in it (leave it out)");
            }
        }
        return strata;
    }

    private static void requireBothSides(String what, double r, double s) {
        if (r == 0 || s == 0) {
            throw new CannotEstimate(
                    what,
                    r == 0 && s == 0
                            ? "no stratum is informative"
                            : "the strata that count have no case "
                                    + (r == 0 ? "among the exposed" : "among the unexposed") + " to compare");
        }
    }
}
