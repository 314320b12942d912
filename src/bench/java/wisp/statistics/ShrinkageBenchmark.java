package wisp.statistics;

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

/** Shrinkage of 20 groups of some forty animals, with posterior intervals and ranks. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 2, time = 1)
@Measurement(iterations = 3, time = 1)
public class ShrinkageBenchmark {
    private final int[] cases = new int[20];
    private final int[] sizes = new int[20];
    private final double[] times = new double[20];
    private BetaBinomial shares;
    private GammaPoisson rates;

    @Setup
    public void drawn() {
        Random random = new Random(20261125);
        for (int i = 0; i < cases.length; i++) {
            sizes[i] = 20 + random.nextInt(40);
            double risk = 0.05 + 0.4 * random.nextDouble();
            for (int animal = 0; animal < sizes[i]; animal++) {
                cases[i] += random.nextDouble() < risk ? 1 : 0;
            }
            times[i] = sizes[i];
        }
        shares = BetaBinomial.fit(cases, sizes);
        rates = GammaPoisson.fit(cases, times);
    }

    @Benchmark
    public BetaBinomial betaBinomialFit() {
        return BetaBinomial.fit(cases, sizes);
    }

    @Benchmark
    public List<Interval> betaBinomialIntervals() {
        return shares.shrunken(0.95);
    }

    @Benchmark
    public PosteriorRanks betaBinomialRanks() {
        return shares.ranks();
    }

    @Benchmark
    public GammaPoisson gammaPoissonFit() {
        return GammaPoisson.fit(cases, times);
    }

    @Benchmark
    public List<Interval> gammaPoissonIntervals() {
        return rates.shrunken(0.95);
    }

    @Benchmark
    public PosteriorRanks gammaPoissonRanks() {
        return rates.ranks();
    }
}
