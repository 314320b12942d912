package wisp.statistics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The exponentially weighted moving average chart: Roberts (1959) Technometrics 1:239; Montgomery 2009, ch. 9.
 * From z₀ = target, zₜ = λxₜ + (1-λ)zₜ₋₁, with exact limits L√vₜ about the target, vₜ = λ²σₜ² + (1-λ)²vₜ₋₁. With one
 * standard error throughout that is Montgomery's σ²λ/(2-λ) (1 - (1-λ)²ᵗ).
 */
public final class Ewma {

    private static final String WHAT = "The moving average chart";

    private Ewma() {}

    /**
     * The chart of values that have standard errors.
     *
     * @param values one value a period
     * @param standardErrors of each value if the process is on target, above 0
     * @param target where the process should be
     * @param lambda weight of the newest value, above 0 and at most 1 (1 is Shewhart's chart)
     * @param width L, standard errors of the average between target and limit, such as 2.7 or 3
     * @throws CannotEstimate if the rows differ in length or a number is out of its range
     */
    public static List<ControlLimits> of(
            double[] values, double[] standardErrors, double target, double lambda, double width) {
        Require.sameLength(WHAT, values.length, standardErrors.length);
        Require.finite(WHAT, "the target", target);
        Require.positive(WHAT, "the width of its limits", width);
        if (!(lambda > 0 && lambda <= 1)) {
            throw new CannotEstimate(
                    WHAT, "the weight of the newest value, " + lambda + ", is not above 0 and at most 1");
        }
        List<ControlLimits> chart = new ArrayList<>(values.length);
        double average = target;
        double variance = 0;
        for (int t = 0; t < values.length; t++) {
            Require.finite(WHAT, "a value", values[t]);
            Require.positive(WHAT, "a standard error", standardErrors[t]);
            average = lambda * values[t] + (1 - lambda) * average;
            variance = Math.pow(lambda * standardErrors[t], 2) + Math.pow(1 - lambda, 2) * variance;
            double reach = width * Math.sqrt(variance);
            chart.add(new ControlLimits(average, target, target - reach, target + reach));
        }
        return List.copyOf(chart);
    }

    /**
     * The chart of proportions, standard errors from the target and each period's size, limits cut off at 0 and 1.
     *
     * @param target strictly between 0 and 1
     * @throws CannotEstimate if the rows differ in length, a sample is empty or impossible, or a number is out of its
     *     range
     */
    public static List<ControlLimits> proportions(
            int[] cases, int[] sizes, double target, double lambda, double width) {
        Require.sameLength(WHAT, cases.length, sizes.length);
        Require.fraction(WHAT, "the target", target);
        double[] values = new double[cases.length];
        double[] errors = new double[cases.length];
        Arrays.setAll(values, i -> {
            Require.share(WHAT, cases[i], sizes[i]);
            errors[i] = Math.sqrt(target * (1 - target) / sizes[i]);
            return (double) cases[i] / sizes[i];
        });
        return of(values, errors, target, lambda, width).stream()
                .map(at -> new ControlLimits(at.value(), target, Math.max(0, at.low()), Math.min(1, at.high())))
                .toList();
    }
}
