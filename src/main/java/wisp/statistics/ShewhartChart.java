package wisp.statistics;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Shewhart's control charts of proportions (p) and of rates (u): Montgomery, Introduction to Statistical Quality
 * Control, 6th ed. 2009, ch. 7. Each point has limits of its own size of sample, {@code width}
 * standard errors about the centre, cut off at 0 (and at 1 for a proportion). With few cases the normal limits are
 * poor; a {@link FunnelLimits} or a CUSUM is then the better choice.
 */
public final class ShewhartChart {

    private static final String P = "The p-chart";

    private static final String U = "The u-chart";

    private ShewhartChart() {}

    /**
     * The p-chart about the pooled proportion.
     *
     * @param width standard errors between the centre and a limit, usually 3
     * @throws CannotEstimate if the rows differ in length, a sample is empty or impossible, width is not above 0, or
     *     no one or everyone is a case (the limits would have no width)
     */
    public static List<ControlLimits> p(int[] cases, int[] sizes, double width) {
        Require.sameLength(P, cases.length, sizes.length);
        double centre = (double) Arrays.stream(cases).asLongStream().sum()
                / Arrays.stream(sizes).asLongStream().sum();
        return p(cases, sizes, centre, width);
    }

    /**
     * The p-chart about a given centre, from an earlier period or a standard.
     *
     * @param centre strictly between 0 and 1
     * @throws CannotEstimate as above
     */
    public static List<ControlLimits> p(int[] cases, int[] sizes, double centre, double width) {
        Require.sameLength(P, cases.length, sizes.length);
        for (int i = 0; i < cases.length; i++) {
            Require.share(P, cases[i], sizes[i]);
        }
        Require.fraction(P, "its centre", centre);
        Require.positive(P, "the width of its limits", width);
        return IntStream.range(0, cases.length)
                .mapToObj(i -> {
                    double reach = width * Math.sqrt(centre * (1 - centre) / sizes[i]);
                    return new ControlLimits(
                            (double) cases[i] / sizes[i],
                            centre,
                            Math.max(0, centre - reach),
                            Math.min(1, centre + reach));
                })
                .toList();
    }

    /**
     * The u-chart about the pooled rate.
     *
     * @param times time at risk, or units inspected, of each point
     * @param width standard errors between the centre and a limit, usually 3
     * @throws CannotEstimate if the rows differ in length, a count is negative, a time is not above 0, width is not
     *     above 0, or there is no event
     */
    public static List<ControlLimits> u(int[] events, double[] times, double width) {
        Require.sameLength(U, events.length, times.length);
        double centre = Arrays.stream(events).asLongStream().sum()
                / Arrays.stream(times).sum();
        return u(events, times, centre, width);
    }

    /**
     * The u-chart about a given rate.
     *
     * @param centre above 0
     * @throws CannotEstimate as above
     */
    public static List<ControlLimits> u(int[] events, double[] times, double centre, double width) {
        Require.sameLength(U, events.length, times.length);
        for (int i = 0; i < events.length; i++) {
            Require.rate(U, events[i], times[i]);
        }
        Require.positive(U, "its centre", centre);
        Require.positive(U, "the width of its limits", width);
        return IntStream.range(0, events.length)
                .mapToObj(i -> {
                    double reach = width * Math.sqrt(centre / times[i]);
                    return new ControlLimits(events[i] / times[i], centre, Math.max(0, centre - reach), centre + reach);
                })
                .toList();
    }
}
