package wisp.statistics;

import java.util.SplittableRandom;
import org.apache.commons.math3.util.CombinatoricsUtils;

/**
 * Fisher's exact test: the table's probability given its margins (Fisher 1935 J R Stat Soc 98:39; Agresti 2002, section
 * 3.5). All p-values are conditional on both margins.
 *
 * <p>The two-sided value adds the probabilities of all tables that are not more probable than the observed one (as R's
 * {@code fisher.test}, with its allowance of 1e-7 for ties); twice the smaller tail is another convention and can be
 * larger. Mid-p counts the observed table half (Lancaster 1961 J Am Stat Assoc 56:223); the two-sided mid-p is twice
 * the smaller mid-p tail (Rothman &amp; Greenland 1998; as epitools' {@code ormidp.test}).
 *
 * <p>A table with an empty margin has one possible arrangement and tests nothing: it is refused, where R answers p = 1.
 */
public final class FisherExactTest {

    private static final String WHAT = "Fisher's exact test";

    private static final double TIE = 1 + 1e-7;

    private FisherExactTest() {}

    /**
     * Two-sided: the sum over tables not more probable than the observed one.
     *
     * @throws CannotEstimate if a margin is 0
     */
    public static double twoSided(TwoByTwoTable table) {
        NoncentralHypergeometric cells = cells(table);
        double[] p = cells.probabilities(1);
        double observed = p[table.exposedCases() - cells.lowest()] * TIE;
        double sum = 0;
        for (double probability : p) {
            sum += probability <= observed ? probability : 0;
        }
        return Math.min(1, sum);
    }

    /**
     * One-sided: as many exposed cases as observed, or more.
     *
     * @throws CannotEstimate if a margin is 0
     */
    public static double greater(TwoByTwoTable table) {
        return Math.min(1, cells(table).atLeast(table.exposedCases(), 1, 1));
    }

    /**
     * One-sided: as many exposed cases as observed, or fewer.
     *
     * @throws CannotEstimate if a margin is 0
     */
    public static double less(TwoByTwoTable table) {
        return Math.min(1, cells(table).atMost(table.exposedCases(), 1, 1));
    }

    /**
     * Two-sided mid-p: twice the smaller tail with the observed table counted half.
     *
     * @throws CannotEstimate if a margin is 0
     */
    public static double midP(TwoByTwoTable table) {
        NoncentralHypergeometric cells = cells(table);
        int a = table.exposedCases();
        return Math.min(1, 2 * Math.min(cells.atLeast(a, 0.5, 1), cells.atMost(a, 0.5, 1)));
    }

    /**
     * A table of any size, by random tables of the same margins: (1 + tables not more probable than the observed one) /
     * (1 + replicates). Exact enumeration is not offered beyond two by two, where it grows out of hand.
     *
     * @param replicates number of random tables, such as 9999
     * @param seed the same seed gives the same p-value
     * @throws CannotEstimate if a margin is 0, the table has fewer than two rows or columns, or there are no replicates
     */
    public static double simulated(int[][] table, int replicates, long seed) {
        if (replicates < 1) {
            throw new CannotEstimate(WHAT, "the number of random tables, " + replicates + ", is below 1");
        }
        Margins margins = Margins.of(table);
        double observed = logFactorials(table);
        SplittableRandom random = new SplittableRandom(seed);
        int[] columns = margins.columnOfEach();
        int asFar = 1;
        for (int i = 0; i < replicates; i++) {
            // A table's probability falls as the factorials of its cells rise.
            if (logFactorials(margins.shuffled(columns, random)) >= observed - 1e-7) {
                asFar++;
            }
        }
        return asFar / (replicates + 1.0);
    }

    private static double logFactorials(int[][] table) {
        double sum = 0;
        for (int[] row : table) {
            for (int count : row) {
                sum += CombinatoricsUtils.factorialLog(count);
            }
        }
        return sum;
    }

    private static NoncentralHypergeometric cells(TwoByTwoTable table) {
        table.requireBothGroups(WHAT);
        if (table.cases() == 0 || table.cases() == table.total()) {
            throw new CannotEstimate(WHAT, "everyone has the same outcome, so that there is nothing to test");
        }
        return NoncentralHypergeometric.of(table);
    }
}
