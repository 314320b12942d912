package wisp.statistics;

import java.util.Arrays;

/**
 * Rates and ratios freed of differences in composition (parity, season, breed) by weighting strata.
 *
 * <p>Direct: each stratum's rate weighted by the standard's share of it, interval by gamma quantiles, Fay &amp; Feuer
 * (1997) Stat Med 16:791. With y = Σ wᵢxᵢ, v = Σ wᵢ²xᵢ and w the largest wᵢ (wᵢ = share of the standard / time at
 * risk):
 *
 * <pre>low = v/(2y) χ²(α/2; 2y²/v), high = (v+w²)/(2(y+w)) χ²(1-α/2; 2(y+w)²/(v+w²))</pre>
 *
 * <p>With one stratum that is Garwood's exact interval; with no event the lower limit is 0 and the upper one finite.
 * Indirect: observed over expected events (the standardised ratio), expected from the standard's rates.
 */
public final class Standardisation {

    private static final String DIRECT = "The directly standardised rate";

    private static final String INDIRECT = "The standardised ratio";

    /** How the interval of the standardised ratio is made. */
    public enum RatioMethod {
        /** Garwood's limits of the observed count over the expected: Breslow &amp; Day 1987, vol. II, ch. 2. */
        GARWOOD_EXACT("observed over expected, Garwood exact"),
        /** Normal on the log scale, variance 1/observed; as epitools' {@code ageadjust.indirect}. */
        WALD_LOG("observed over expected, Wald log");

        private final String label;

        RatioMethod(String label) {
            this.label = label;
        }

        /** The name in {@link Interval#method()}. */
        public String label() {
            return label;
        }
    }

    private Standardisation() {}

    /**
     * The directly standardised rate with its gamma interval.
     *
     * @param events events in each stratum
     * @param time time at risk (or number at risk) in each stratum, above 0
     * @param standard size of each stratum in the standard, 0 or more, not all 0
     * @throws CannotEstimate if the rows differ in length, a count is negative, a time is not above 0, the standard is
     *     empty or negative, or the level is not in (0, 1)
     */
    public static Interval direct(int[] events, double[] time, double[] standard, double level) {
        Require.sameLength(DIRECT, events.length, time.length);
        Require.sameLength(DIRECT, events.length, standard.length);
        Require.level(DIRECT, level);
        double all = sumOfStandard(standard);
        double rate = 0;
        double variance = 0;
        double largest = 0;
        for (int i = 0; i < events.length; i++) {
            Require.rate(DIRECT, events[i], time[i]);
            double weight = standard[i] / all / time[i];
            rate += weight * events[i];
            variance += weight * weight * events[i];
            largest = Math.max(largest, weight);
        }
        double tail = (1 - level) / 2;
        double low = rate == 0 ? 0 : gamma(tail, rate, variance);
        double high = gamma(1 - tail, rate + largest, variance + largest * largest);
        return new Interval(rate, low, high, level, "direct standardisation, Fay-Feuer gamma");
    }

    private static double sumOfStandard(double[] standard) {
        for (double size : standard) {
            if (!(size >= 0 && Double.isFinite(size))) {
                throw new CannotEstimate(DIRECT, "a stratum of the standard, " + size + ", is not 0 or more");
            }
        }
        double all = Arrays.stream(standard).sum();
        if (all == 0) {
            throw new CannotEstimate(DIRECT, "the standard is empty");
        }
        return all;
    }

    /** Quantile of the gamma distribution of a given mean and variance. */
    private static double gamma(double p, double mean, double variance) {
        return Quantile.gamma(p, mean * mean / variance) * variance / mean;
    }

    /**
     * Expected events: the standard's rate of each stratum times the time at risk there.
     *
     * @throws CannotEstimate if the rows differ in length, a count is negative or a time is not above 0
     */
    public static double expected(double[] time, int[] standardEvents, double[] standardTime) {
        Require.sameLength(INDIRECT, time.length, standardEvents.length);
        Require.sameLength(INDIRECT, time.length, standardTime.length);
        double expected = 0;
        for (int i = 0; i < time.length; i++) {
            Require.rate(INDIRECT, standardEvents[i], standardTime[i]);
            Require.positive(INDIRECT, "the time at risk", time[i]);
            expected += time[i] * standardEvents[i] / standardTime[i];
        }
        return expected;
    }

    /**
     * The standardised ratio (SMR, SIR): observed over expected events. With nothing observed the exact interval begins
     * at 0 and the log interval is refused.
     *
     * @throws CannotEstimate if the observed are negative, the expected are not above 0, the log method meets no
     *     observed event, or the level is not in (0, 1)
     */
    public static Interval ratio(int observed, double expected, double level, RatioMethod method) {
        Require.count(INDIRECT, observed);
        Require.positive(INDIRECT, "the number of expected events", expected);
        double z = Require.normalQuantile(INDIRECT, level);
        double ratio = observed / expected;
        return switch (method) {
            case GARWOOD_EXACT -> {
                Interval exact = GarwoodInterval.of(observed, expected, level);
                yield new Interval(ratio, exact.low(), exact.high(), level, method.label());
            }
            case WALD_LOG -> {
                if (observed == 0) {
                    throw new CannotEstimate(
                            "The log interval of the standardised ratio",
                            "no event was observed, so that the logarithm does not exist (the exact method does)");
                }
                double factor = Math.exp(z / Math.sqrt(observed));
                yield new Interval(ratio, ratio / factor, ratio * factor, level, method.label());
            }
        };
    }
}
