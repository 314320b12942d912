package wisp.statistics;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Intervals and tests of proportions and two-by-two tables. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 2, time = 1)
@Measurement(iterations = 3, time = 1)
public class ProportionBenchmark {
    private final TwoByTwoTable table = new TwoByTwoTable(36, 4, 16, 64);
    private final TwoByTwoTable sparse = new TwoByTwoTable(0, 12, 5, 4);
    private final int[][] satisfaction = {{1, 2, 1, 0}, {3, 3, 6, 1}, {10, 10, 14, 9}, {6, 7, 12, 11}};

    @Benchmark
    public Interval wilson() {
        return WilsonInterval.of(36, 40, 0.95);
    }

    @Benchmark
    public Interval clopperPearson() {
        return ClopperPearsonInterval.of(36, 40, 0.95);
    }

    @Benchmark
    public Interval newcombeDifference() {
        return NewcombeDifference.of(table, 0.95);
    }

    @Benchmark
    public Interval moverRatio() {
        return Mover.ratio(WilsonInterval.of(36, 40, 0.95), WilsonInterval.of(16, 80, 0.95));
    }

    @Benchmark
    public Interval katz() {
        return RiskRatio.of(table, 0.95, RiskRatio.Method.KATZ_LOG);
    }

    @Benchmark
    public Interval koopman() {
        return RiskRatio.of(table, 0.95, RiskRatio.Method.KOOPMAN_SCORE);
    }

    @Benchmark
    public Interval woolf() {
        return OddsRatio.of(table, 0.95, OddsRatio.Method.WOOLF_LOGIT);
    }

    @Benchmark
    public Interval exactOddsRatio() {
        return OddsRatio.of(sparse, 0.95, OddsRatio.Method.FISHER_EXACT_CONDITIONAL);
    }

    @Benchmark
    public double fisher() {
        return FisherExactTest.twoSided(table);
    }

    @Benchmark
    public double midP() {
        return FisherExactTest.midP(table);
    }

    @Benchmark
    public TestResult pearson() {
        return ChiSquareTest.pearson(satisfaction);
    }

    @Benchmark
    public TestResult pearsonSimulated2000Times() {
        return ChiSquareTest.simulated(satisfaction, 2000, 1);
    }

    @Benchmark
    public TrendTest trendNormal() {
        return CochranArmitage.normal(
                new int[] {48, 38, 5, 1, 1}, new int[] {17114, 14502, 793, 127, 38}, new double[] {0, 0.5, 1.5, 4, 7});
    }

    @Benchmark
    public EValue eValue() {
        return EValue.of(RiskRatio.of(table, 0.95, RiskRatio.Method.KATZ_LOG));
    }
}
