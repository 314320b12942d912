package wisp.statistics;

import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.apache.commons.math3.special.Gamma;
import org.apache.commons.statistics.distribution.GammaDistribution;

/**
 * Groups' rates drawn from one gamma distribution, fitted by maximum likelihood to each group's events over its time at
 * risk, and each group's rate shrunken toward the mean (empirical Bayes): Greenwood &amp; Yule (1920) J R Stat Soc
 * 83:255; Clayton &amp; Kaldor (1987) Biometrics 43:671.
 *
 * <p>With shape s and rate r the events are negative binomial with mean m t, m = s/r, and dispersion θ = 1/s. Given the
 * data a group's rate is Gamma(s + x, r + t); s and r are taken as known, so
 * the intervals are too narrow when groups are few, as those of {@link BetaBinomial}.
 *
 * <p>Where the groups differ no more than chance the maximum is at θ = 0: then {@link #boundary} is true, shape and
 * rate are {@link Double#POSITIVE_INFINITY}, every group's value is the pooled rate with its Garwood interval, and
 * every group is as likely as any other to be the largest.
 *
 * @param shape s
 * @param rate r, in the unit of time
 * @param mean m = s/r, the pooled rate at the boundary
 * @param dispersion θ = 1/s
 * @param boundary whether the maximum is at θ = 0
 * @param logLikelihood with all constants
 * @param events events in each group
 * @param times time at risk of each group
 */
public record GammaPoisson(
        double shape,
        double rate,
        double mean,
        double dispersion,
        boolean boundary,
        double logLikelihood,
        List<Integer> events,
        List<Double> times) {

    /** The method's name in {@link Interval#method()}. */
    public static final String METHOD = "gamma-Poisson shrinkage";

    /** The method's name in {@link Interval#method()} where no spread was found. */
    public static final String BOUNDARY_METHOD = "pooled, no spread between groups, Garwood exact";

    private static final String WHAT = "The spread between groups";

    /**
     * Fits groups' events over their time at risk.
     *
     * @param events events in each group
     * @param times time at risk of each group, above 0, in the same order
     * @throws CannotEstimate if the rows differ in length, there are fewer than two groups, a count is negative, a
     *     time is not above 0, or there is no event
     */
    public static GammaPoisson fit(int[] events, double[] times) {
        Require.sameLength(WHAT, events.length, times.length);
        for (int i = 0; i < events.length; i++) {
            Require.rate(WHAT, events[i], times[i]);
        }
        if (events.length < 2) {
            throw new CannotEstimate(WHAT, "there are fewer than two groups");
        }
        if (Arrays.stream(events).allMatch(x -> x == 0)) {
            throw new CannotEstimate(WHAT, "there is no event in any group");
        }
        double theta = DispersionSearch.maximum(
                candidate -> slope(events, times, meanAt(events, times, candidate), candidate),
                candidate -> logLikelihood(events, times, meanAt(events, times, candidate), candidate));
        double mean = meanAt(events, times, theta);
        return new GammaPoisson(
                1 / theta,
                1 / (theta * mean),
                mean,
                theta,
                theta == 0,
                logLikelihood(events, times, mean, theta),
                Arrays.stream(events).boxed().toList(),
                DoubleStream.of(times).boxed().toList());
    }

    /** At a given θ the score Σ (x - mt)/(1 + θmt) falls in m, so the root is the only one. */
    private static double meanAt(int[] events, double[] times, double theta) {
        double low = Double.POSITIVE_INFINITY;
        double high = 0;
        for (int i = 0; i < events.length; i++) {
            low = Math.min(low, events[i] / times[i]);
            high = Math.max(high, events[i] / times[i]);
        }
        if (low == high) {
            return low;
        }
        return Quantile.root(
                mean -> {
                    double score = 0;
                    for (int i = 0; i < events.length; i++) {
                        double expected = mean * times[i];
                        score += (events[i] - expected) / (1 + theta * expected);
                    }
                    return score;
                },
                low,
                high);
    }

    private static double logLikelihood(int[] events, double[] times, double mean, double theta) {
        double sum = 0;
        for (int i = 0; i < events.length; i++) {
            double expected = mean * times[i];
            int x = events[i];
            for (int k = 1; k < x; k++) {
                sum += Math.log1p(k * theta);
            }
            double spread = theta == 0 ? expected : Math.log1p(theta * expected) / theta;
            sum += x * (Math.log(expected) - Math.log1p(theta * expected)) - spread - Gamma.logGamma(x + 1.0);
        }
        return sum;
    }

    /** Derivative of the log-likelihood by θ. */
    private static double slope(int[] events, double[] times, double mean, double theta) {
        double sum = 0;
        for (int i = 0; i < events.length; i++) {
            double expected = mean * times[i];
            double u = theta * expected;
            for (int k = 1; k < events[i]; k++) {
                sum += k / (1 + k * theta);
            }
            // (log(1+u) - u/(1+u)) / θ² loses its digits for small u; its series is m²t² (1/2 - 2u/3 + 3u²/4 - ...).
            double bend = u < 1e-3
                    ? expected * expected * (0.5 - u * (2.0 / 3 - u * (0.75 - u * (0.8 - u * 5 / 6))))
                    : (Math.log1p(u) - u / (1 + u)) / (theta * theta);
            sum += bend - events[i] * expected / (1 + u);
        }
        return sum;
    }

    /**
     * Each group's posterior mean rate with its equal-tailed posterior interval, in the order of the input.
     *
     * @throws CannotEstimate if the level is not in (0, 1)
     */
    public List<Interval> shrunken(double level) {
        Require.level(WHAT, level);
        if (boundary) {
            int total = events.stream().mapToInt(Integer::intValue).sum();
            double everyTime = times.stream().mapToDouble(Double::doubleValue).sum();
            Interval garwood = GarwoodInterval.of(total, everyTime, level);
            Interval pooled = new Interval(garwood.value(), garwood.low(), garwood.high(), level, BOUNDARY_METHOD);
            return events.stream().map(x -> pooled).toList();
        }
        double tail = (1 - level) / 2;
        return IntStream.range(0, events.size())
                .mapToObj(i -> {
                    double a = shape + events.get(i);
                    double b = rate + times.get(i);
                    return new Interval(
                            a / b, Quantile.gamma(tail, a) / b, Quantile.gamma(1 - tail, a) / b, level, METHOD);
                })
                .toList();
    }

    /**
     * The chance that each group's rate is the largest of all, and its expected rank (1 is the largest), by numerical
     * integration on the log scale.
     */
    public PosteriorRanks ranks() {
        int groups = events.size();
        return boundary
                ? PosteriorRanks.equal(groups)
                : PosteriorRanks.integrate(IntStream.range(0, groups)
                        .mapToObj(i -> logPosterior(shape + events.get(i), rate + times.get(i)))
                        .toList());
    }

    private static PosteriorRanks.Posterior logPosterior(double a, double b) {
        GammaDistribution posterior = GammaDistribution.of(a, 1 / b);
        double logGamma = Gamma.logGamma(a);
        return new PosteriorRanks.Posterior(
                log -> Math.exp(a * (log + Math.log(b)) - b * Math.exp(log) - logGamma),
                log -> posterior.cumulativeProbability(Math.exp(log)),
                Math.max(-600, Math.log(Quantile.gamma(1e-13, a) / b)),
                Math.log(Quantile.gamma(1 - 1e-13, a) / b),
                Math.sqrt(Gamma.trigamma(a)));
    }
}
