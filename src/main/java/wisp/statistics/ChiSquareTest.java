package wisp.statistics;

import java.util.Arrays;
import java.util.SplittableRandom;

/**
 * Pearson's chi-square test of a table of counts, rows against columns: Pearson (1900) Phil Mag 50:157; Agresti,
 * Categorical Data Analysis, 2nd ed. 2002, ch. 3.
 *
 * <p>Where expected counts are small (Cochran 1954 Biometrics 10:417: some below 1, or a fifth of them below 5) the
 * chi-square distribution is a poor guide; {@link #simulated} then holds the margins fixed and needs no such rule.
 */
public final class ChiSquareTest {

    private static final String WHAT = "The chi-square test";

    private ChiSquareTest() {}

    /**
     * Without continuity correction, (r-1)(c-1) degrees of freedom.
     *
     * @param table counts by row, all rows of one length
     * @throws CannotEstimate if the table has fewer than two rows or columns, a negative count, or a row or column
     *     whose sum is 0 (leave it out first)
     */
    public static TestResult pearson(int[][] table) {
        Margins margins = Margins.of(table);
        return TestResult.chiSquare(margins.pearson(table, 0), margins.degreesOfFreedom(), "Pearson chi-square");
    }

    /**
     * A two-by-two table with Yates' continuity correction (1934) J R Stat Soc Suppl 1:217; the half is capped at the
     * observed distance, as in R's {@code chisq.test}.
     *
     * @throws CannotEstimate if a margin is 0
     */
    public static TestResult yates(TwoByTwoTable table) {
        int[][] counts = counts(table);
        Margins margins = Margins.of(counts);
        double distance = Math.abs(counts[0][0] - margins.expected(0, 0));
        return TestResult.chiSquare(
                margins.pearson(counts, Math.min(0.5, distance)), 1, "Pearson chi-square with Yates' correction");
    }

    /**
     * A two-by-two table without correction.
     *
     * @throws CannotEstimate if a margin is 0
     */
    public static TestResult pearson(TwoByTwoTable table) {
        return pearson(counts(table));
    }

    /**
     * Whether groups share one risk: Pearson's test of cases and non-cases by group, groups of size 0 left out.
     *
     * @throws CannotEstimate if the rows differ in length, a count is impossible, fewer than two groups have members,
     *     or everyone or no one is a case
     */
    public static TestResult homogeneity(int[] cases, int[] sizes) {
        Require.sameLength(WHAT, cases.length, sizes.length);
        int groups = 0;
        int[][] table = new int[2][cases.length];
        for (int i = 0; i < cases.length; i++) {
            if (cases[i] == 0 && sizes[i] == 0) {
                continue;
            }
            Require.share(WHAT, cases[i], sizes[i]);
            table[0][groups] = cases[i];
            table[1][groups] = sizes[i] - cases[i];
            groups++;
        }
        return pearson(new int[][] {Arrays.copyOf(table[0], groups), Arrays.copyOf(table[1], groups)});
    }

    /**
     * Pearson's statistic with a p-value from random tables of the same margins, (1 + tables at least as far) / (1 +
     * replicates): Hope (1968) J R Stat Soc B 30:582. Degrees of freedom are reported but play no part.
     *
     * @param replicates number of random tables, such as 9999
     * @param seed the same seed gives the same p-value
     * @throws CannotEstimate as {@link #pearson(int[][])}, or if there are no replicates
     */
    public static TestResult simulated(int[][] table, int replicates, long seed) {
        if (replicates < 1) {
            throw new CannotEstimate(WHAT, "the number of random tables, " + replicates + ", is below 1");
        }
        Margins margins = Margins.of(table);
        double observed = margins.pearson(table, 0);
        SplittableRandom random = new SplittableRandom(seed);
        int[] columns = margins.columnOfEach();
        int asFar = 1;
        for (int i = 0; i < replicates; i++) {
            // Rounding must not split tables that are equally far.
            if (margins.pearson(margins.shuffled(columns, random), 0) >= observed * (1 - 1e-9)) {
                asFar++;
            }
        }
        return new TestResult(
                observed,
                margins.degreesOfFreedom(),
                asFar / (replicates + 1.0),
                "Pearson chi-square, " + replicates + " random tables, seed " + seed);
    }

    static int[][] counts(TwoByTwoTable table) {
        return new int[][] {
            {table.exposedCases(), table.exposedOthers()}, {table.unexposedCases(), table.unexposedOthers()}
        };
    }
}
