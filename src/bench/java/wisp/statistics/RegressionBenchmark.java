package wisp.statistics;

import java.util.Arrays;
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
import wisp.statistics.ClusterRobust.SmallSample;

/** Regressions of a million rows on eight columns, the intercept among them. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 2, time = 2)
@Measurement(iterations = 3, time = 3)
public class RegressionBenchmark {
    private InventedRows rows;
    private RegressionFit fit;
    private double[] counts;
    private double[] exposure;
    private double[] covariate;

    @Setup
    public void drawn() {
        rows = new InventedRows(1_000_000, true, 1000, 8);
        fit = Logistic.fit(rows.outcomes, rows.design);
        counts = new double[rows.times.length];
        Arrays.setAll(counts, i -> rows.events[i] ? 1 : 0);
        exposure = rows.times;
        covariate = new double[rows.times.length];
        Arrays.setAll(covariate, i -> rows.design[i][1]);
    }

    @Benchmark
    public RegressionFit logistic() {
        return Logistic.fit(rows.outcomes, rows.design);
    }

    @Benchmark
    public RegressionFit poisson() {
        return Poisson.fit(counts, exposure, rows.design);
    }

    @Benchmark
    public Coefficients clusterRobust() {
        return ClusterRobust.of(fit, rows.strata, SmallSample.CLUSTERS_AND_COLUMNS);
    }

    @Benchmark
    public double[][] naturalSpline() {
        return NaturalCubicSpline.basis(covariate, new double[] {-1, 0, 1}, -2, 2);
    }

    @Benchmark
    public double[][] restrictedSpline() {
        return RestrictedCubicSpline.basis(covariate, -1.5, -0.5, 0.5, 1.5);
    }

    @Benchmark
    public TrendTest trend() {
        return CochranArmitage.exact(
                new int[] {48, 38, 5, 1, 1}, new int[] {17114, 14502, 793, 127, 38}, new double[] {0, 0.5, 1.5, 4, 7});
    }
}
