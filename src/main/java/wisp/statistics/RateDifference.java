package wisp.statistics;

/**
 * The difference of two Poisson rates, exposed less unexposed, with the Wald interval, variance x1/t1² + x0/t0²
 * (Rothman &amp; Greenland, Modern Epidemiology, 2nd ed. 1998, ch. 14). It rests on the normal distribution and
 * wants some five events a group; a group without events adds nothing to its variance, so the interval is then too
 * narrow.
 */
public final class RateDifference {

    /** The method's name in {@link Interval#method()}. */
    public static final String METHOD = "Wald";

    private static final String WHAT = "The rate difference";

    private RateDifference() {}

    /**
     * The rate difference per unit of time.
     *
     * @throws CannotEstimate if a count is negative, a time is not above 0, there is no event in either group, or the
     *     level is not in (0, 1)
     */
    public static Interval wald(
            int exposedEvents, double exposedTime, int unexposedEvents, double unexposedTime, double level) {
        Require.rate(WHAT, exposedEvents, exposedTime);
        Require.rate(WHAT, unexposedEvents, unexposedTime);
        double z = Require.normalQuantile(WHAT, level);
        if (exposedEvents == 0 && unexposedEvents == 0) {
            throw new CannotEstimate(WHAT, "there is no event in either group");
        }
        double difference = exposedEvents / exposedTime - unexposedEvents / unexposedTime;
        double variance =
                exposedEvents / (exposedTime * exposedTime) + unexposedEvents / (unexposedTime * unexposedTime);
        double reach = z * Math.sqrt(variance);
        return new Interval(difference, difference - reach, difference + reach, level, METHOD);
    }
}
