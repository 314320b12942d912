package wisp.statistics;

/** Builds and checks design matrices: rows of observations, columns of covariates, the first commonly all 1. */
public final class Design {
    private static final double LARGEST = 1e100;

    private Design() {}

    /** The rows with a leading column of ones, from the columns given. */
    public static double[][] withIntercept(double[]... columns) {
        if (columns.length == 0) {
            throw new CannotEstimate("A regression", "it was given no columns, so the number of rows is not known");
        }
        for (double[] column : columns) {
            if (column.length != columns[0].length) {
                throw new CannotEstimate("A regression", "its columns are not equally long");
            }
        }
        double[][] design = new double[columns[0].length][columns.length + 1];
        for (int i = 0; i < design.length; i++) {
            design[i][0] = 1;
            for (int j = 0; j < columns.length; j++) {
                design[i][j + 1] = columns[j][i];
            }
        }
        return design;
    }

    /**
     * A copy of the rows with column {@code j} set to {@code value}, as when all had that exposure.
     *
     * @throws CannotEstimate when a row has no such column
     */
    public static double[][] with(double[][] design, int j, double value) {
        double[][] changed = new double[design.length][];
        for (int i = 0; i < design.length; i++) {
            if (j < 0 || j >= design[i].length) {
                throw new CannotEstimate("A regression", "row " + (i + 1) + " has no column " + (j + 1));
            }
            changed[i] = design[i].clone();
            changed[i][j] = value;
        }
        return changed;
    }

    /** A copy of the rows with a column of ones before the others. */
    static double[][] afterOnes(double[][] rows) {
        double[][] design = new double[rows.length][];
        for (int i = 0; i < rows.length; i++) {
            design[i] = new double[rows[i].length + 1];
            design[i][0] = 1;
            System.arraycopy(rows[i], 0, design[i], 1, rows[i].length);
        }
        return design;
    }

    static double dot(double[] row, double[] coefficients) {
        double sum = 0;
        for (int j = 0; j < row.length; j++) {
            sum += row[j] * coefficients[j];
        }
        return sum;
    }

    static void check(String what, double[][] design, int observations) {
        if (observations == 0) {
            throw new CannotEstimate(what, "there are no observations");
        }
        if (design.length != observations) {
            throw new CannotEstimate(what, "there are " + design.length + " rows for " + observations + " outcomes");
        }
        int columns = design[0].length;
        if (columns == 0) {
            throw new CannotEstimate(what, "there are no columns");
        }
        checkRows(what, design, columns);
        int dependent = firstDependent(crossProduct(design, columns));
        if (dependent >= 0) {
            throw new CannotEstimate(
                    what, "column " + (dependent + 1) + " is a combination of those before it (collinear, or all 0)");
        }
    }

    /** Every row as long as {@code columns} and of finite numbers whose squares are finite too. */
    static void checkRows(String what, double[][] design, int columns) {
        for (int i = 0; i < design.length; i++) {
            if (design[i].length != columns) {
                throw new CannotEstimate(
                        what, "row " + (i + 1) + " has " + design[i].length + " columns where " + columns + " are due");
            }
            for (double x : design[i]) {
                if (!Double.isFinite(x)) {
                    throw new CannotEstimate(what, "row " + (i + 1) + " holds " + x + ", not a finite number");
                }
                if (Math.abs(x) > LARGEST) {
                    throw new CannotEstimate(what, "row " + (i + 1) + " holds " + x + ", too large to reckon with");
                }
            }
        }
    }

    private static double[][] crossProduct(double[][] design, int columns) {
        double[][] product = new double[columns][columns];
        for (double[] row : design) {
            for (int j = 0; j < columns; j++) {
                for (int k = 0; k <= j; k++) {
                    product[j][k] += row[j] * row[k];
                }
            }
        }
        return product;
    }

    /** The first column whose part orthogonal to those before it is below 1e-6 of its length; -1 when none is. */
    private static int firstDependent(double[][] lower) {
        int p = lower.length;
        for (int j = 0; j < p; j++) {
            double length = lower[j][j];
            for (int k = 0; k < j; k++) {
                double sum = lower[j][k];
                for (int l = 0; l < k; l++) {
                    sum -= lower[j][l] * lower[k][l];
                }
                lower[j][k] = sum / lower[k][k];
                lower[j][j] -= lower[j][k] * lower[j][k];
            }
            if (lower[j][j] <= 1e-12 * length) {
                return j;
            }
            lower[j][j] = Math.sqrt(lower[j][j]);
        }
        return -1;
    }
}
