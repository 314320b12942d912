package wisp.indicator;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.inference.FisherExactTest;
import wisp.statistics.CannotEstimate;
import wisp.statistics.Interval;
import wisp.statistics.Mover;
import wisp.statistics.MultipleTesting;
import wisp.statistics.RateRatio;
import wisp.statistics.WilsonInterval;

/** Puts figures of one definition side by side: season and last season, stratum and all other calves. */
final class Comparing {
    /** What a stratum is compared with. */
    static final String ALL_OTHERS = "all others";

    private Comparing() {}

    static Comparison withSeason(Estimate now, Estimate before) {
        return compare(now, before, before.season(), pValue(now, before), Double.NaN, 1);
    }

    /** Each stratum with the calves at risk of all others together; the p-values carry Holm's adjustment. */
    static List<Estimate> withOthers(Estimate whole, List<Estimate> strata) {
        if (strata.size() < 2) {
            return strata;
        }
        List<Estimate> others = new ArrayList<>();
        for (Estimate stratum : strata) {
            List<Verdict> rest = new ArrayList<>();
            strata.stream()
                    .filter(other -> other != stratum)
                    .forEach(other ->
                            other.verdicts().stream().filter(Verdict::atRisk).forEach(rest::add));
            others.add(Estimator.estimate(whole.indicator(), ALL_OTHERS, whole.season(), rest, Map.of()));
        }
        double[] p = new double[strata.size()];
        for (int i = 0; i < p.length; i++) {
            p[i] = pValue(strata.get(i), others.get(i));
        }
        double[] adjusted = holm(p);
        int made = (int) Arrays.stream(p).filter(v -> !Double.isNaN(v)).count();
        List<Estimate> compared = new ArrayList<>();
        for (int i = 0; i < p.length; i++) {
            Comparison comparison = compare(strata.get(i), others.get(i), ALL_OTHERS, p[i], adjusted[i], made);
            compared.add(strata.get(i).with(List.of(), comparison));
        }
        return compared;
    }

    private static Comparison compare(Estimate a, Estimate b, String with, double p, double adjusted, int made) {
        Interval difference = null;
        Interval ratio = null;
        if (a.interval() != null && b.interval() != null) {
            difference = Mover.difference(a.interval(), b.interval());
            ratio = ratio(a, b);
        }
        String words = ComparisonWords.of(a.indicator().measure(), with, difference, made < 2 ? p : adjusted, made);
        return new Comparison(with, b, difference, ratio, p, adjusted, made, words);
    }

    private static Interval ratio(Estimate a, Estimate b) {
        try {
            if (a.indicator().rule() instanceof Rule.Rate) {
                return RateRatio.of(
                        a.numerator(),
                        a.denominator(),
                        b.numerator(),
                        b.denominator(),
                        Estimator.LEVEL,
                        RateRatio.Method.EXACT_CONDITIONAL);
            }
            return Mover.ratio(a.interval(), b.interval());
        } catch (CannotEstimate noRatio) {
            return null;
        }
    }

    /**
     * Two-sided p-value of no difference: exact (conditional binomial for rates, Fisher for shares), and where calves
     * are censored the complementary log-log test at a fixed time (Klein and others 2007, Stat Med 26:4505). That test
     * does not exist beside a risk of 0 or 1: there Fisher's, with the censored placed so that the two lie nearest.
     */
    static double pValue(Estimate a, Estimate b) {
        if (a.interval() == null || b.interval() == null) {
            return Double.NaN;
        }
        try {
            if (a.indicator().rule() instanceof Rule.Rate) {
                return RateRatio.exactPValue(a.numerator(), a.denominator(), b.numerator(), b.denominator());
            }
        } catch (CannotEstimate noEvent) {
            return Double.NaN;
        }
        if (plainShare(a) && plainShare(b)) {
            return fisherP(a.numerator(), (int) a.denominator(), b.numerator(), (int) b.denominator());
        }
        double p = logLogP(a.interval(), b.interval());
        return Double.isNaN(p) && a.indicator().rule() instanceof Rule.Risk ? nearestP(a, b) : p;
    }

    /** The higher risk with its censored as clear, the lower without them: no other reading of them is nearer. */
    private static double nearestP(Estimate a, Estimate b) {
        if (a.interval().value() == b.interval().value()) {
            return Double.NaN;
        }
        Estimate higher = a.interval().value() >= b.interval().value() ? a : b;
        Estimate lower = higher == a ? b : a;
        int followed = (int) lower.verdicts().stream()
                .filter(one -> one.atRisk() && one.ending() != Verdict.Ending.CENSORED)
                .count();
        int all = (int) higher.denominator();
        boolean turned = followed == 0 || higher.numerator() * (double) followed <= lower.numerator() * (double) all;
        return turned ? 1 : fisherP(higher.numerator(), all, lower.numerator(), followed);
    }

    private static double fisherP(int cases, int calves, int others, int otherCalves) {
        int[][] table = {{cases, calves - cases}, {others, otherCalves - others}};
        boolean variation = cases + others > 0 && cases + others < calves + otherCalves;
        return variation ? FisherExactTest.withDefaults().test(table).getPValue() : Double.NaN;
    }

    private static boolean plainShare(Estimate estimate) {
        return estimate.interval().method().equals(WilsonInterval.METHOD);
    }

    private static double logLogP(Interval a, Interval b) {
        double spread = Math.hypot(spread(a), spread(b));
        double z = (logLog(a.value()) - logLog(b.value())) / spread;
        return Double.isFinite(z) ? 2 * NormalDistribution.of(0, 1).survivalProbability(Math.abs(z)) : Double.NaN;
    }

    private static double spread(Interval interval) {
        double quantile = NormalDistribution.of(0, 1).inverseSurvivalProbability((1 - interval.level()) / 2);
        return (logLog(interval.high()) - logLog(interval.low())) / (2 * quantile);
    }

    private static double logLog(double risk) {
        return Math.log(-Math.log1p(-risk));
    }

    private static double[] holm(double[] p) {
        double[] computed = Arrays.stream(p).filter(v -> !Double.isNaN(v)).toArray();
        double[] adjusted = computed.length == 0 ? computed : MultipleTesting.holm(computed);
        double[] all = new double[p.length];
        int next = 0;
        for (int i = 0; i < p.length; i++) {
            all[i] = Double.isNaN(p[i]) ? Double.NaN : adjusted[next++];
        }
        return all;
    }
}
