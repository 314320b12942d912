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

/** The models and curves that the million-row benchmarks leave out, over 100,000 rows in 1,000 clusters. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 2, time = 1)
@Measurement(iterations = 3, time = 1)
public class ModelBenchmark {
    private InventedRows rows;
    private double[][] covariates;
    private int[] categories;
    private RegressionFit fit;
    private SurvivalCurve curve;

    @Setup
    public void drawn() {
        rows = new InventedRows(100_000, true, 1000, 4);
        covariates = new double[rows.design.length][];
        Arrays.setAll(covariates, i -> Arrays.copyOfRange(rows.design[i], 1, 4));
        categories = new int[rows.design.length];
        Arrays.setAll(categories, i -> rows.outcomes[i] ? 2 : rows.events[i] ? 1 : 0);
        fit = Logistic.fit(rows.outcomes, rows.design);
        curve = KaplanMeier.of(rows.times, rows.events);
    }

    @Benchmark
    public CoxRegression cox() {
        return CoxRegression.fit(rows.times, rows.events, covariates);
    }

    @Benchmark
    public GeneralisedEstimatingEquations estimatingEquations() {
        return GeneralisedEstimatingEquations.exchangeable(rows.outcomes, rows.strata, rows.design);
    }

    @Benchmark
    public ProportionalOdds proportionalOdds() {
        return ProportionalOdds.fit(categories, covariates);
    }

    @Benchmark
    public GComputation gComputation() {
        return GComputation.of(
                fit.coefficients(), Design.with(rows.design, 2, 1), Design.with(rows.design, 2, 0), 0.95);
    }

    @Benchmark
    public RegressionFit firth() {
        return Logistic.firth(rows.outcomes, rows.design);
    }

    @Benchmark
    public Interval profile() {
        return fit.profile(1, 0.95);
    }

    @Benchmark
    public CumulativeHazardCurve nelsonAalen() {
        return NelsonAalen.of(rows.times, rows.events);
    }

    @Benchmark
    public Interval restrictedMean() {
        return RestrictedMean.of(curve, 150);
    }
}
