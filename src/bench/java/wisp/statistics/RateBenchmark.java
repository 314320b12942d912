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

/** Intervals and tests of rates, and standardisation. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 2, time = 1)
@Measurement(iterations = 3, time = 1)
public class RateBenchmark {
    private final int[] events = {107, 141, 60, 40, 39, 25};
    private final double[] time = {230061, 329449, 114920, 39487, 14208, 3052};
    private final double[] standard = {731177, 1001290, 380410, 155301, 64012, 19310};

    @Benchmark
    public Interval garwood() {
        return GarwoodInterval.of(41, 28010, 0.95);
    }

    @Benchmark
    public Interval rateRatioExact() {
        return RateRatio.of(41, 28010, 15, 19017, 0.95, RateRatio.Method.EXACT_CONDITIONAL);
    }

    @Benchmark
    public Interval rateRatioMidP() {
        return RateRatio.of(41, 28010, 15, 19017, 0.95, RateRatio.Method.MID_P_EXACT);
    }

    @Benchmark
    public Interval rateDifference() {
        return RateDifference.wald(41, 28010, 15, 19017, 0.95);
    }

    @Benchmark
    public Interval directStandardisation() {
        return Standardisation.direct(events, time, standard, 0.95);
    }

    @Benchmark
    public Interval standardisedRatio() {
        return Standardisation.ratio(412, 380.5, 0.95, Standardisation.RatioMethod.GARWOOD_EXACT);
    }
}
