package wisp.statistics;

/**
 * The exact interval for a Poisson count over time at risk: Garwood (1936) Biometrika 28:437, by gamma quantiles (half
 * the chi-square quantile on twice the degrees of freedom).
 *
 * <pre>low = Gamma(α/2; x) / t, high = Gamma(1-α/2; x+1) / t</pre>
 *
 * <p>With no event the lower limit is 0 and the upper one stays finite: 3.69 events at 95 %.
 */
public final class GarwoodInterval {

    /** The method's name in {@link Interval#method()}. */
    public static final String METHOD = "Garwood exact Poisson";

    private static final String WHAT = "The rate";

    private GarwoodInterval() {}

    /**
     * Events per unit of time at risk.
     *
     * @param time time at risk, above 0, in any unit
     * @throws CannotEstimate if events are negative, time is not above 0 and finite, or the level is not in (0, 1)
     */
    public static Interval of(int events, double time, double level) {
        return of(events, time, level, 1);
    }

    /**
     * Events per so many units of time at risk.
     *
     * @param time time at risk, above 0, in any unit
     * @param per how many units of time the rate is given for, such as 1000 animal-days
     * @throws CannotEstimate if events are negative, time or per are not above 0 and finite, or the level is not in
     *     (0, 1)
     */
    public static Interval of(int events, double time, double level, double per) {
        Require.rate(WHAT, events, time);
        Require.level(WHAT, level);
        Require.positive(WHAT, "the multiplier of the rate", per);
        double tail = (1 - level) / 2;
        double scale = per / time;
        double low = events == 0 ? 0 : Quantile.gamma(tail, events);
        double high = Quantile.gamma(1 - tail, events + 1.0);
        return new Interval(events * scale, low * scale, high * scale, level, METHOD);
    }
}
