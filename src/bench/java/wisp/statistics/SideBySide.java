package wisp.statistics;

import java.io.BufferedOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.SortedMap;
import java.util.function.Supplier;

/**
 * Writes invented rows for R to read, does the work on them here, and writes each work's best time with the figures it
 * gave; {@code side-by-side.R} then does the same work and prints both.
 */
final class SideBySide {
    private static final int ROWS = 1_000_000;
    private static final int COLUMNS = 8;
    private static final int REPEATS = 5;

    private SideBySide() {}

    public static void main(String[] arguments) throws IOException {
        Path folder = Files.createDirectories(Path.of(arguments[0]));
        InventedRows days = new InventedRows(ROWS, true, 20, COLUMNS);
        InventedRows continuous = new InventedRows(ROWS, false, 20, 1);
        write(folder, days, continuous);
        try (PrintStream out =
                new PrintStream(Files.newOutputStream(folder.resolve("wisp.tsv")), false, StandardCharsets.UTF_8)) {
            timed(out, "Kaplan-Meier, 20 strata, days", () -> byStratum(days));
            timed(out, "Kaplan-Meier, 20 strata, continuous", () -> byStratum(continuous));
            timed(
                    out,
                    "Aalen-Johansen, 2 causes, days",
                    () -> AalenJohansen.of(days.times, days.causes, 2).stream()
                            .flatMapToDouble(curve ->
                                    Arrays.stream(new double[] {curve.at(90).value(), curve.standardErrors()[89]}))
                            .toArray());
            timed(out, "log-rank, 20 groups, days", () -> new double[] {
                LogRank.of(days.times, days.events, days.strata).chiSquare()
            });
            timed(out, "logistic, 8 columns", () -> {
                Coefficients fit = Logistic.fit(days.outcomes, days.design).coefficients();
                double[] both = Arrays.copyOf(fit.values(), 2 * COLUMNS);
                Arrays.setAll(both, j -> j < COLUMNS ? both[j] : fit.standardError(j - COLUMNS));
                return both;
            });
        }
    }

    private static double[] byStratum(InventedRows rows) {
        SortedMap<Integer, SurvivalCurve> curves = KaplanMeier.byStratum(rows.times, rows.events, rows.strata);
        return curves.values().stream()
                .flatMapToDouble(curve -> {
                    Interval there = curve.at(90);
                    return Arrays.stream(new double[] {there.value(), there.low(), there.high()});
                })
                .toArray();
    }

    private static void timed(PrintStream out, String work, Supplier<double[]> task) {
        double best = Double.POSITIVE_INFINITY;
        double[] figures = {};
        for (int repeat = 0; repeat < REPEATS; repeat++) {
            long start = System.nanoTime();
            figures = task.get();
            best = Math.min(best, (System.nanoTime() - start) / 1e9);
        }
        out.print(work + "\t" + best);
        for (double figure : figures) {
            out.print("\t" + figure);
        }
        out.println();
    }

    private static void write(Path folder, InventedRows days, InventedRows continuous) throws IOException {
        try (DataOutputStream out = new DataOutputStream(
                new BufferedOutputStream(Files.newOutputStream(folder.resolve("rows.bin")), 1 << 20))) {
            for (InventedRows rows : new InventedRows[] {days, continuous}) {
                for (int i = 0; i < ROWS; i++) {
                    out.writeDouble(rows.times[i]);
                }
                for (int i = 0; i < ROWS; i++) {
                    out.writeDouble(rows.causes[i]);
                }
                for (int i = 0; i < ROWS; i++) {
                    out.writeDouble(rows.strata[i]);
                }
            }
            for (int j = 1; j < COLUMNS; j++) {
                for (int i = 0; i < ROWS; i++) {
                    out.writeDouble(days.design[i][j]);
                }
            }
            for (int i = 0; i < ROWS; i++) {
                out.writeDouble(days.outcomes[i] ? 1 : 0);
            }
        }
    }
}
