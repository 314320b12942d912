package wisp.statistics;

import java.util.Arrays;
import java.util.List;
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

/** Charts' limits and run lengths, planning, multiple testing. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 2, time = 1)
@Measurement(iterations = 3, time = 1)
public class ChartBenchmark {
    private final BernoulliCusum bernoulli = BernoulliCusum.likelihoodRatio(0.1, 0.25, 3);
    private final PoissonCusum poisson = new PoissonCusum(2.88, 6);
    private final int[] cases = new int[52];
    private final int[] sizes = new int[52];
    private final double[] p = new double[1000];

    @Setup
    public void drawn() {
        Arrays.setAll(cases, i -> i % 9);
        Arrays.setAll(sizes, i -> 30 + i % 17);
        Arrays.setAll(p, i -> (i * 37 % 1000 + 0.5) / 1000);
    }

    @Benchmark
    public FunnelLimits funnelOf200() {
        return FunnelLimits.of(200, 0.2, 0.998, FunnelLimits.Method.EXACT_BINOMIAL_INTERPOLATED);
    }

    @Benchmark
    public List<ControlLimits> pChartOf52() {
        return ShewhartChart.p(cases, sizes, 3);
    }

    @Benchmark
    public List<ControlLimits> ewmaOf52() {
        return Ewma.proportions(cases, sizes, 0.1, 0.2, 3);
    }

    @Benchmark
    public double bernoulliRunLength() {
        return bernoulli.averageRunLength(0.1);
    }

    @Benchmark
    public BernoulliCusum bernoulliLimitForRunLength() {
        return BernoulliCusum.withRunLength(0.1, 0.25, 500);
    }

    @Benchmark
    public double poissonRunLength() {
        return poisson.averageRunLength(2);
    }

    @Benchmark
    public PoissonCusum poissonLimitForRunLength() {
        return PoissonCusum.withRunLength(2, 4, 370);
    }

    @Benchmark
    public double sampleSize() {
        return SampleSize.twoRisks(0.2, 0.1, 0.95, 0.8, SampleSize.designEffect(20, 0.05));
    }

    @Benchmark
    public double power() {
        return SampleSize.powerOfTwoRisks(0.2, 0.1, 0.95, 200, 1.5);
    }

    @Benchmark
    public double[] holmOf1000() {
        return MultipleTesting.holm(p);
    }

    @Benchmark
    public double[] benjaminiHochbergOf1000() {
        return MultipleTesting.benjaminiHochberg(p);
    }
}
