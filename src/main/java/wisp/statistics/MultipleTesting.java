package wisp.statistics;

import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * Adjusts p-values for the number of tests made, so that an adjusted value is compared with the plain level (0.05).
 * Order and length of the answer are those of the input; all three agree with R's {@code p.adjust}.
 */
public final class MultipleTesting {

    private static final String WHAT = "The adjusted p-values";

    private MultipleTesting() {}

    /**
     * Holm's step-down values, which hold the chance of any false alarm whatever the dependence: Holm (1979) Scand J
     * Stat 6:65. The i-th smallest is times m - i + 1, made increasing, at most 1.
     *
     * @throws CannotEstimate if there is none or one is not in 0..1
     */
    public static double[] holm(double... p) {
        int[] order = order(p);
        double[] adjusted = new double[p.length];
        double largest = 0;
        for (int i = 0; i < order.length; i++) {
            largest = Math.max(largest, Math.min(1, p[order[i]] * (p.length - i)));
            adjusted[order[i]] = largest;
        }
        return adjusted;
    }

    /**
     * Benjamini and Hochberg's step-up values, which hold the expected share of false alarms among the alarms, for
     * independent or positively dependent tests: (1995) J R Stat Soc B 57:289. The i-th smallest is times m/i.
     *
     * @throws CannotEstimate if there is none or one is not in 0..1
     */
    public static double[] benjaminiHochberg(double... p) {
        int[] order = order(p);
        double[] adjusted = new double[p.length];
        double smallest = 1;
        for (int i = order.length - 1; i >= 0; i--) {
            smallest = Math.min(smallest, p[order[i]] * p.length / (i + 1));
            adjusted[order[i]] = smallest;
        }
        return adjusted;
    }

    /**
     * Bonferroni's values: every one times the number of tests, at most 1 (Dunn 1961 J Am Stat Assoc 56:52).
     *
     * @throws CannotEstimate if there is none or one is not in 0..1
     */
    public static double[] bonferroni(double... p) {
        double[] adjusted = new double[p.length];
        for (int i : order(p)) {
            adjusted[i] = Math.min(1, p[i] * p.length);
        }
        return adjusted;
    }

    private static int[] order(double[] p) {
        if (p.length == 0) {
            throw new CannotEstimate(WHAT, "there is no p-value");
        }
        for (double one : p) {
            if (!(one >= 0 && one <= 1)) {
                throw new CannotEstimate(WHAT, "a p-value, " + one + ", is not between 0 and 1");
            }
        }
        return IntStream.range(0, p.length)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> p[i]))
                .mapToInt(Integer::intValue)
                .toArray();
    }
}
