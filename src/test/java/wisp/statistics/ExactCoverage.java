package wisp.statistics;

import java.util.function.Function;
import java.util.function.IntFunction;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.apache.commons.statistics.distribution.PoissonDistribution;

/** The exact chance that an interval holds the truth, by adding up every possible outcome; no simulation. */
final class ExactCoverage {

    private ExactCoverage() {}

    static double binomial(int n, double p, IntFunction<Interval> interval) {
        BinomialDistribution cases = BinomialDistribution.of(n, p);
        double covered = 0;
        for (int x = 0; x <= n; x++) {
            covered += holds(interval.apply(x), p) ? cases.probability(x) : 0;
        }
        return covered;
    }

    static double poisson(double mean, IntFunction<Interval> interval) {
        PoissonDistribution events = PoissonDistribution.of(mean);
        double covered = 0;
        for (int x = 0; x <= mean + 12 * Math.sqrt(mean) + 30; x++) {
            covered += holds(interval.apply(x), mean) ? events.probability(x) : 0;
        }
        return covered;
    }

    /** Two groups; a table that the method refuses counts as covered, since nothing false is said of it. */
    static double twoGroups(
            int n1, double p1, int n2, double p2, double truth, Function<TwoByTwoTable, Interval> interval) {
        BinomialDistribution first = BinomialDistribution.of(n1, p1);
        BinomialDistribution second = BinomialDistribution.of(n2, p2);
        double covered = 0;
        for (int x1 = 0; x1 <= n1; x1++) {
            for (int x2 = 0; x2 <= n2; x2++) {
                if (holdsOrRefuses(interval, TwoByTwoTable.ofGroups(x1, n1, x2, n2), truth)) {
                    covered += first.probability(x1) * second.probability(x2);
                }
            }
        }
        return covered;
    }

    private static boolean holdsOrRefuses(
            Function<TwoByTwoTable, Interval> interval, TwoByTwoTable table, double truth) {
        try {
            return holds(interval.apply(table), truth);
        } catch (CannotEstimate refused) {
            return true;
        }
    }

    private static boolean holds(Interval interval, double truth) {
        return interval.low() <= truth && truth <= interval.high();
    }
}
