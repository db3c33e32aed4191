package rimeward.speed;

import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import rimeward.air.MoistAir;
import rimeward.air.Saturation;

/** What a look at the air costs: a tick of 1 µs has room for some tens of these. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(2)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class SaturationBench {

    private static final int POINTS = 1024;

    private final double[] airC =
            new SplittableRandom(1).doubles(POINTS, -20, 30).toArray();

    @Benchmark
    @OperationsPerInvocation(POINTS)
    public double overSurface() {
        double sum = 0;
        for (double tC : airC) {
            sum += Saturation.overSurfacePa(tC);
        }
        return sum;
    }

    @Benchmark
    @OperationsPerInvocation(POINTS)
    public double thereAndBack() {
        double sum = 0;
        for (double tC : airC) {
            sum += MoistAir.dewPointC(Saturation.overWaterPa(tC));
        }
        return sum;
    }
}
