package wisp.statistics;

import org.apache.commons.statistics.distribution.BinomialDistribution;

/**
 * The ratio of two Poisson rates, exposed (x1 events in t1) over unexposed (x0 in t0). Given all events, those of the
 * exposed are binomial with probability π = θ t1 / (θ t1 + t0), so an interval for π becomes one for the ratio θ:
 * Rothman &amp; Greenland, Modern Epidemiology, 2nd ed. 1998, ch. 14; Armitage, Berry &amp; Matthews 2002.
 *
 * <p>No event in the exposed: ratio and lower limit 0. No event in the unexposed: ratio and upper limit {@link
 * Double#POSITIVE_INFINITY}; the other limit is finite. No event at all: refused. The log interval needs events in
 * both.
 */
public final class RateRatio {

    private static final String WHAT = "The rate ratio";

    /** How the estimate and the interval are made. */
    public enum Method {
        /** Clopper-Pearson limits of the binomial share; as R's {@code poisson.test}. */
        EXACT_CONDITIONAL("exact conditional"),
        /** Mid-p limits of the binomial share, median-unbiased value; as epitools' {@code rateratio.midp}. */
        MID_P_EXACT("mid-p exact conditional"),
        /** Normal on the log scale, variance 1/x1 + 1/x0: Rothman &amp; Greenland, ch. 14. */
        WALD_LOG("Wald log");

        private final String label;

        Method(String label) {
            this.label = label;
        }

        /** The name in {@link Interval#method()}. */
        public String label() {
            return label;
        }
    }

    private RateRatio() {}

    /**
     * The rate ratio with its interval.
     *
     * @throws CannotEstimate if a count is negative, a time is not above 0, there is no event, the log method meets a
     *     group without events, or the level is not in (0, 1)
     */
    public static Interval of(
            int exposedEvents,
            double exposedTime,
            int unexposedEvents,
            double unexposedTime,
            double level,
            Method method) {
        requireEvents(exposedEvents, exposedTime, unexposedEvents, unexposedTime);
        Require.level(WHAT, level);
        double ratio = exposedEvents / exposedTime / (unexposedEvents / unexposedTime);
        double times = unexposedTime / exposedTime;
        return switch (method) {
            case EXACT_CONDITIONAL -> {
                Interval share = ClopperPearsonInterval.of(exposedEvents, exposedEvents + unexposedEvents, level);
                yield new Interval(ratio, odds(share.low()) * times, odds(share.high()) * times, level, method.label());
            }
            case MID_P_EXACT -> midP(exposedEvents, unexposedEvents, times, level);
            case WALD_LOG -> waldLog(exposedEvents, unexposedEvents, ratio, level);
        };
    }

    /**
     * Exact two-sided p-value of equal rates: the probability, given all events, of a split not more probable than the
     * one observed (as R's {@code poisson.test}).
     *
     * @throws CannotEstimate as {@link #of}
     */
    public static double exactPValue(int exposedEvents, double exposedTime, int unexposedEvents, double unexposedTime) {
        requireEvents(exposedEvents, exposedTime, unexposedEvents, unexposedTime);
        return BinomialTest.twoSided(
                exposedEvents, exposedEvents + unexposedEvents, exposedTime / (exposedTime + unexposedTime));
    }

    /**
     * Two-sided mid-p of equal rates: twice the smaller tail of the conditional binomial, the observed split counted
     * half (as epitools' {@code rateratio.midp}).
     *
     * @throws CannotEstimate as {@link #of}
     */
    public static double midPValue(int exposedEvents, double exposedTime, int unexposedEvents, double unexposedTime) {
        requireEvents(exposedEvents, exposedTime, unexposedEvents, unexposedTime);
        BinomialDistribution split = BinomialDistribution.of(
                Math.addExact(exposedEvents, unexposedEvents), exposedTime / (exposedTime + unexposedTime));
        double half = split.probability(exposedEvents) / 2;
        double above = split.survivalProbability(exposedEvents) + half;
        double below = split.cumulativeProbability(exposedEvents) - half;
        return Math.min(1, 2 * Math.min(above, below));
    }

    private static void requireEvents(int x1, double t1, int x0, double t0) {
        Require.rate(WHAT, x1, t1);
        Require.rate(WHAT, x0, t0);
        if (x1 == 0 && x0 == 0) {
            throw new CannotEstimate(WHAT, "there is no event in either group");
        }
    }

    private static double odds(double share) {
        return share / (1 - share);
    }

    private static Interval midP(int x1, int x0, double times, double level) {
        double tail = (1 - level) / 2;
        double value = x1 == 0 ? 0 : x0 == 0 ? 1 : midPShare(x1, x1 + x0, 0.5);
        double low = x1 == 0 ? 0 : midPShare(x1, x1 + x0, tail);
        double high = x0 == 0 ? 1 : midPShare(x1, x1 + x0, 1 - tail);
        return new Interval(
                odds(value) * times, odds(low) * times, odds(high) * times, level, Method.MID_P_EXACT.label());
    }

    /** The share at which P(X > x) + P(X = x)/2 is the given probability. */
    private static double midPShare(int x, int n, double probability) {
        return Quantile.root(
                share -> {
                    BinomialDistribution binomial = BinomialDistribution.of(n, share);
                    return binomial.survivalProbability(x) + binomial.probability(x) / 2 - probability;
                },
                0,
                1);
    }

    private static Interval waldLog(int x1, int x0, double ratio, double level) {
        if (x1 == 0 || x0 == 0) {
            throw new CannotEstimate(
                    "The log interval of the rate ratio",
                    "a group has no event, so that the logarithm does not exist (the exact method does)");
        }
        double factor = Math.exp(Require.normalQuantile(WHAT, level) * Math.sqrt(1.0 / x1 + 1.0 / x0));
        return new Interval(ratio, ratio / factor, ratio * factor, level, Method.WALD_LOG.label());
    }
}
