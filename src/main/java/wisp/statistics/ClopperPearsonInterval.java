package wisp.statistics;

/**
 * The exact interval for a single proportion: Clopper &amp; Pearson (1934) Biometrika 26:404, by beta quantiles. Each
 * tail holds at most half of 1 - level, so the interval covers at least its level at every true proportion; it is wider
 * than Wilson's for that.
 *
 * <pre>low = Beta(α/2; x, n-x+1), high = Beta(1-α/2; x+1, n-x)</pre>
 *
 * <p>At 0 of n the lower limit is 0 and at n of n the upper limit is 1; the other tail still holds α/2, as in R's
 * {@code binom.test}, so the limits stay comparable over groups (the "rule of three" uses α there instead).
 */
public final class ClopperPearsonInterval {

    /** The method's name in {@link Interval#method()}. */
    public static final String METHOD = "Clopper-Pearson exact";

    private static final String WHAT = "The proportion";

    private ClopperPearsonInterval() {}

    /**
     * The proportion of cases among n with its interval.
     *
     * @throws CannotEstimate if n is below 1, cases are not in 0..n, or the level is not in (0, 1)
     */
    public static Interval of(int cases, int n, double level) {
        Require.share(WHAT, cases, n);
        Require.level(WHAT, level);
        double tail = (1 - level) / 2;
        double low = cases == 0 ? 0 : Quantile.beta(tail, cases, n - cases + 1.0);
        double high = cases == n ? 1 : Quantile.beta(1 - tail, cases + 1.0, n - cases);
        return new Interval((double) cases / n, low, high, level, METHOD);
    }
}
