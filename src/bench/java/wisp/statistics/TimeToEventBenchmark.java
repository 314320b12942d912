package wisp.statistics;

import java.util.List;
import java.util.SortedMap;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Curves and tests of time to event over a million lives in 20 strata, on whole days and on continuous time. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 2, time = 2)
@Measurement(iterations = 3, time = 3)
public class TimeToEventBenchmark {
    @Param({"true", "false"})
    public boolean days;

    private InventedRows rows;

    @Setup
    public void drawn() {
        rows = new InventedRows(1_000_000, days, 20, 1);
    }

    @Benchmark
    public SortedMap<Integer, SurvivalCurve> kaplanMeierByStratum() {
        return KaplanMeier.byStratum(rows.times, rows.events, rows.strata);
    }

    @Benchmark
    public List<IncidenceCurve> aalenJohansen() {
        return AalenJohansen.of(rows.times, rows.causes, 2);
    }

    @Benchmark
    public CurveComparison logRank() {
        return LogRank.of(rows.times, rows.events, rows.strata);
    }

    @Benchmark
    public CurveComparison gray() {
        int[] halves = new int[rows.strata.length];
        for (int i = 0; i < halves.length; i++) {
            halves[i] = rows.strata[i] % 2;
        }
        return GrayTest.of(rows.times, rows.causes, 1, halves);
    }
}
