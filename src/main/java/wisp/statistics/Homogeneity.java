package wisp.statistics;

import java.util.List;

/**
 * Whether an association is the same in every stratum. A small p-value says that one pooled figure hides a difference;
 * a large one says little, as these tests see only gross differences in small strata.
 */
public final class Homogeneity {

    private static final String WHAT = "The test of homogeneity";

    /** What is compared by Woolf's test. */
    public enum Measure {
        /** Log odds ratios. */
        ODDS_RATIO,
        /** Log risk ratios. */
        RISK_RATIO
    }

    private Homogeneity() {}

    /**
     * Breslow &amp; Day (1980) Statistical Methods in Cancer Research, vol. I, eq. 4.30, about the Mantel-Haenszel odds
     * ratio, with Tarone's correction (1985) Biometrika 72:91, without which it is a little too large. Degrees of
     * freedom are the informative strata (both groups, both outcomes) less 1.
     *
     * @throws CannotEstimate if fewer than two strata are informative or the pooled odds ratio is 0 or infinite
     */
    public static TestResult breslowDayTarone(List<TwoByTwoTable> strata) {
        return breslowDay(strata, true);
    }

    /**
     * Breslow and Day's test as first published, without Tarone's correction; as epiR's {@code bOR.homog}.
     *
     * @throws CannotEstimate as {@link #breslowDayTarone}
     */
    public static TestResult breslowDay(List<TwoByTwoTable> strata) {
        return breslowDay(strata, false);
    }

    private static TestResult breslowDay(List<TwoByTwoTable> strata, boolean tarone) {
        double oddsRatio = MantelHaenszel.oddsRatio(strata, 0.95).value();
        List<TwoByTwoTable> informative = strata.stream()
                .filter(t -> t.exposed() > 0 && t.unexposed() > 0 && t.cases() > 0 && t.cases() < t.total())
                .toList();
        requireTwo(informative);
        double chiSquare = 0;
        double distances = 0;
        double variances = 0;
        for (TwoByTwoTable t : informative) {
            double a = fitted(t, oddsRatio);
            double rest = t.unexposed() - t.cases() + a;
            double variance = 1 / (1 / a + 1 / (t.exposed() - a) + 1 / (t.cases() - a) + 1 / rest);
            double distance = t.exposedCases() - a;
            chiSquare += distance * distance / variance;
            distances += distance;
            variances += variance;
        }
        double corrected = tarone ? chiSquare - distances * distances / variances : chiSquare;
        return TestResult.chiSquare(
                Math.max(0, corrected), informative.size() - 1, tarone ? "Breslow-Day-Tarone" : "Breslow-Day");
    }

    /** Exposed cases of a table with the same margins and the given odds ratio; the root inside the margins. */
    private static double fitted(TwoByTwoTable t, double oddsRatio) {
        double low = Math.max(0, t.cases() - t.unexposed());
        double high = Math.min(t.exposed(), t.cases());
        return Quantile.root(
                a -> a * (t.unexposed() - t.cases() + a) - oddsRatio * (t.exposed() - a) * (t.cases() - a), low, high);
    }

    /**
     * Woolf's test (1955) Ann Hum Genet 19:251: Q = Σ w (log ratio - mean)² with weights 1/variance, strata less 1
     * degrees of freedom.
     *
     * @throws CannotEstimate if there are fewer than two strata or one has a cell of 0 that the logarithm needs; {@link
     *     #woolfHaldaneAnscombe} exists then
     */
    public static TestResult woolf(List<TwoByTwoTable> strata, Measure measure) {
        return woolf(strata, measure, 0, "Woolf");
    }

    /**
     * Woolf's test of odds ratios with a half added to every cell of every stratum (Haldane 1956, Anscombe 1956), so
     * that zero cells do not stop it; as the {@code woolf} of R's help page on {@code mantelhaen.test}.
     *
     * @throws CannotEstimate if there are fewer than two strata
     */
    public static TestResult woolfHaldaneAnscombe(List<TwoByTwoTable> strata) {
        return woolf(strata, Measure.ODDS_RATIO, 0.5, "Woolf, a half added to every cell");
    }

    private static TestResult woolf(List<TwoByTwoTable> strata, Measure measure, double added, String method) {
        requireTwo(strata);
        double weights = 0;
        double weighted = 0;
        double squares = 0;
        for (int i = 0; i < strata.size(); i++) {
            TwoByTwoTable t = strata.get(i);
            double a = t.exposedCases() + added;
            double b = t.exposedOthers() + added;
            double c = t.unexposedCases() + added;
            double d = t.unexposedOthers() + added;
            boolean odds = measure == Measure.ODDS_RATIO;
            double log = odds ? Math.log(a * d / (b * c)) : Math.log(a / (a + b) / (c / (c + d)));
            double variance = odds ? 1 / a + 1 / b + 1 / c + 1 / d : 1 / a - 1 / (a + b) + 1 / c - 1 / (c + d);
            if (!Double.isFinite(log) || !(variance > 0) || Double.isInfinite(variance)) {
                throw new CannotEstimate(WHAT, "stratum " + (i + 1) + " has a cell of 0, so that no logarithm exists");
            }
            weights += 1 / variance;
            weighted += log / variance;
            squares += log * log / variance;
        }
        double q = squares - weighted * weighted / weights;
        return TestResult.chiSquare(Math.max(0, q), strata.size() - 1, method);
    }

    private static void requireTwo(List<TwoByTwoTable> strata) {
        if (strata.size() < 2) {
            throw new CannotEstimate(WHAT, "fewer than two strata have both groups and both outcomes");
        }
    }
}
