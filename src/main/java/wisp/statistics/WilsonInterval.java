package wisp.statistics;

/**
 * Wilson's score interval for a single proportion, without continuity correction: Wilson (1927) J Am Stat Assoc 22:209;
 * Newcombe (1998) Stat Med 17:857, method 3. With p = x/n and z the normal quantile,
 *
 * <pre>(2np + z² ± z √(z² + 4np(1-p))) / (2(n + z²))</pre>
 *
 * <p>At 0 of n the lower limit is exactly 0, at n of n the upper limit is exactly 1; no half case is ever added.
 */
public final class WilsonInterval {

    /** The method's name in {@link Interval#method()}. */
    public static final String METHOD = "Wilson score";

    private static final String WHAT = "The proportion";

    private WilsonInterval() {}

    /**
     * The proportion of cases among n with its interval.
     *
     * @throws CannotEstimate if n is below 1, cases are not in 0..n, or the level is not in (0, 1)
     */
    public static Interval of(int cases, int n, double level) {
        Require.share(WHAT, cases, n);
        double z = Require.normalQuantile(WHAT, level);
        double p = (double) cases / n;
        double middle = 2.0 * cases + z * z;
        double reach = z * Math.sqrt(z * z + 4.0 * cases * (1 - p));
        double twice = 2 * (n + z * z);
        double low = cases == 0 ? 0 : (middle - reach) / twice;
        double high = cases == n ? 1 : (middle + reach) / twice;
        return new Interval(p, low, high, level, METHOD);
    }
}
