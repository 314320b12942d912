package wisp.statistics;

import java.util.Arrays;
import java.util.SplittableRandom;

/**
 * Row and column sums of a table of counts, none of them 0.
 *
 * @param rows row sums
 * @param columns column sums
 * @param total sum of all counts
 */
record Margins(int[] rows, int[] columns, int total) {

    private static final String WHAT = "The test of the table";

    static Margins of(int[][] table) {
        if (table.length < 2 || table[0].length < 2) {
            throw new CannotEstimate(WHAT, "the table has fewer than two rows or fewer than two columns");
        }
        int[] rows = new int[table.length];
        int[] columns = new int[table[0].length];
        for (int i = 0; i < rows.length; i++) {
            if (table[i].length != columns.length) {
                throw new CannotEstimate(WHAT, "its rows are not all of one length");
            }
            for (int j = 0; j < columns.length; j++) {
                if (table[i][j] < 0) {
                    throw new CannotEstimate(WHAT, "a count in it is negative");
                }
                rows[i] = Math.addExact(rows[i], table[i][j]);
                columns[j] = Math.addExact(columns[j], table[i][j]);
            }
        }
        requireFilled("row", rows);
        requireFilled("column", columns);
        return new Margins(
                rows,
                columns,
                Math.toIntExact(Arrays.stream(rows).asLongStream().sum()));
    }

    private static void requireFilled(String side, int[] sums) {
        for (int i = 0; i < sums.length; i++) {
            if (sums[i] == 0) {
                throw new CannotEstimate(WHAT, side + " " + (i + 1) + " of the table has no count in it");
            }
        }
    }

    double expected(int row, int column) {
        return (double) rows[row] * columns[column] / total;
    }

    int degreesOfFreedom() {
        return (rows.length - 1) * (columns.length - 1);
    }

    /** Sum of (|observed - expected| - correction)² / expected. */
    double pearson(int[][] table, double correction) {
        double sum = 0;
        for (int i = 0; i < rows.length; i++) {
            for (int j = 0; j < columns.length; j++) {
                double distance = Math.abs(table[i][j] - expected(i, j)) - correction;
                sum += distance * distance / expected(i, j);
            }
        }
        return sum;
    }

    /** The column of each of the counted, one after another. */
    int[] columnOfEach() {
        int[] each = new int[total];
        int next = 0;
        for (int j = 0; j < columns.length; j++) {
            Arrays.fill(each, next, next + columns[j], j);
            next += columns[j];
        }
        return each;
    }

    /** A random table of these margins: the columns are shuffled and dealt out to the rows. */
    int[][] shuffled(int[] columnOfEach, SplittableRandom random) {
        int[][] table = new int[rows.length][columns.length];
        int next = 0;
        for (int i = 0; i < rows.length; i++) {
            for (int end = next + rows[i]; next < end; next++) {
                int other = next + random.nextInt(total - next);
                int column = columnOfEach[other];
                columnOfEach[other] = columnOfEach[next];
                columnOfEach[next] = column;
                table[i][column]++;
            }
        }
        return table;
    }
}
