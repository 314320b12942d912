package wisp.statistics;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Pooling and homogeneity over 20 strata of some sixty animals each. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 2, time = 1)
@Measurement(iterations = 3, time = 1)
public class StratifiedBenchmark {
    private List<TwoByTwoTable> strata;

    @Setup
    public void drawn() {
        Random random = new Random(20261125);
        strata = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
            strata.add(new TwoByTwoTable(
                    1 + random.nextInt(30), 1 + random.nextInt(30), 1 + random.nextInt(30), 1 + random.nextInt(30)));
        }
    }

    @Benchmark
    public Interval riskRatio() {
        return MantelHaenszel.riskRatio(strata, 0.95);
    }

    @Benchmark
    public Interval oddsRatio() {
        return MantelHaenszel.oddsRatio(strata, 0.95);
    }

    @Benchmark
    public Interval riskDifference() {
        return MantelHaenszel.riskDifference(strata, 0.95, MantelHaenszel.DifferenceVariance.SATO);
    }

    @Benchmark
    public Interval exactOddsRatio() {
        return MantelHaenszel.exactOddsRatio(strata, 0.95);
    }

    @Benchmark
    public TestResult chiSquare() {
        return MantelHaenszel.chiSquare(strata, true);
    }

    @Benchmark
    public TestResult breslowDayTarone() {
        return Homogeneity.breslowDayTarone(strata);
    }

    @Benchmark
    public TestResult woolfQ() {
        return Homogeneity.woolf(strata, Homogeneity.Measure.RISK_RATIO);
    }
}
