package wisp.statistics;

import java.util.Random;

/** Invented rows for the benchmarks, the same from the same seed. */
final class InventedRows {
    final double[] times;
    final boolean[] events;
    final int[] causes;
    final int[] strata;
    final boolean[] outcomes;
    final double[][] design;

    /**
     * @param n rows
     * @param days whether times are whole days, with many ties, or continuous
     * @param strataCount strata, equally likely
     * @param columns of the design, the intercept among them
     */
    InventedRows(int n, boolean days, int strataCount, int columns) {
        Random random = new Random(20261125);
        times = new double[n];
        events = new boolean[n];
        causes = new int[n];
        strata = new int[n];
        outcomes = new boolean[n];
        design = new double[n][columns];
        for (int i = 0; i < n; i++) {
            double time = Math.min(180, -300 * Math.log(1 - random.nextDouble()));
            times[i] = days ? Math.ceil(time) : time;
            double which = random.nextDouble();
            causes[i] = time == 180 || which < 0.3 ? 0 : which < 0.8 ? 1 : 2;
            events[i] = causes[i] == 1;
            strata[i] = random.nextInt(strataCount);
            double eta = -2;
            design[i][0] = 1;
            for (int j = 1; j < columns; j++) {
                design[i][j] = j % 2 == 0 ? random.nextInt(2) : random.nextGaussian();
                eta += 0.1 * j * design[i][j];
            }
            outcomes[i] = random.nextDouble() < 1 / (1 + Math.exp(-eta));
        }
    }
}
