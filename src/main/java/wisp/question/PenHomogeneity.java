package wisp.question;

import wisp.statistics.CannotEstimate;
import wisp.statistics.ChiSquareTest;
import wisp.statistics.FisherExactTest;
import wisp.statistics.TestResult;
import wisp.statistics.TwoByTwoTable;

/**
 * The test whether all pens share one share of dirty calves.
 *
 * @param chiSquare Pearson's statistic, not a number where there is nothing to test
 * @param df pens less one
 * @param p by the method named
 * @param method chi-square, or Fisher's exact test (two pens) or random tables where a calf count of less than 5 was
 *     expected somewhere
 * @param why why there is no test, null where there is one
 */
public record PenHomogeneity(double chiSquare, int df, double p, String method, String why) {
    static final long SEED = 20180401;
    private static final int TABLES = 4_999;
    private static final long CELLS = 20_000_000;

    static PenHomogeneity of(int[] dirty, int[] sizes) {
        try {
            TestResult pearson = ChiSquareTest.homogeneity(dirty, sizes);
            if (smallestExpected(dirty, sizes) >= 5) {
                return new PenHomogeneity(
                        pearson.statistic(), pearson.degreesOfFreedom(), pearson.pValue(), pearson.method(), null);
            }
            if (dirty.length == 2) {
                double p = FisherExactTest.twoSided(TwoByTwoTable.ofGroups(dirty[0], sizes[0], dirty[1], sizes[1]));
                return new PenHomogeneity(pearson.statistic(), 1, p, "Fisher's exact test", null);
            }
            TestResult random = ChiSquareTest.simulated(table(dirty, sizes), replicates(sizes), SEED);
            return new PenHomogeneity(
                    random.statistic(), random.degreesOfFreedom(), random.pValue(), random.method(), null);
        } catch (CannotEstimate cannot) {
            return new PenHomogeneity(Double.NaN, 0, Double.NaN, "", cannot.getMessage());
        }
    }

    /** Whether the pens differ, taken together, by more than chance. */
    public boolean moreThanChance() {
        return p < 0.05;
    }

    private static double smallestExpected(int[] dirty, int[] sizes) {
        double total = 0;
        double cases = 0;
        int smallest = Integer.MAX_VALUE;
        for (int i = 0; i < sizes.length; i++) {
            total += sizes[i];
            cases += dirty[i];
            smallest = Math.min(smallest, sizes[i]);
        }
        return smallest * Math.min(cases, total - cases) / total;
    }

    /** Fewer tables for very many calves, so that the answer does not keep anybody waiting. */
    private static int replicates(int[] sizes) {
        long calves = 0;
        for (int n : sizes) {
            calves += n;
        }
        return (int) Math.max(999, Math.min(TABLES, CELLS / calves));
    }

    private static int[][] table(int[] dirty, int[] sizes) {
        int[][] table = new int[2][sizes.length];
        for (int i = 0; i < sizes.length; i++) {
            table[0][i] = dirty[i];
            table[1][i] = sizes[i] - dirty[i];
        }
        return table;
    }
}
