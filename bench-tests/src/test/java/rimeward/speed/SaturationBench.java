package rimeward.speed;

import java.util.Arrays;
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
import rimeward.air.AirConstants;
import rimeward.air.HylandWexler;
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

    private final double[] vapourPa =
            Arrays.stream(airC).map(tC -> 0.8 * HylandWexler.overWaterPa(tC)).toArray();

    @Benchmark
    @OperationsPerInvocation(POINTS)
    public double overWater() {
        double sum = 0;
        for (double tC : airC) {
            sum += Saturation.overWaterPa(tC);
        }
        return sum;
    }

    @Benchmark
    @OperationsPerInvocation(POINTS)
    public double overWaterByFormula() {
        double sum = 0;
        for (double tC : airC) {
            sum += HylandWexler.overWaterPa(tC);
        }
        return sum;
    }

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
    public double dewPoint() {
        double sum = 0;
        for (double pa : vapourPa) {
            sum += MoistAir.dewPointC(pa);
        }
        return sum;
    }

    /** Three Newton steps on the logarithm of the formula, from the air's temperature: within 0.001 K for these points. */
    @Benchmark
    @OperationsPerInvocation(POINTS)
    public double dewPointByFormula() {
        double sum = 0;
        for (int i = 0; i < POINTS; i++) {
            double logPa = StrictMath.log(vapourPa[i]);
            double dewC = airC[i];
            for (int step = 0; step < 3; step++) {
                double pa = HylandWexler.overWaterPa(dewC);
                dewC -= (StrictMath.log(pa) - logPa) * pa / HylandWexler.overWaterSlopePaPerK(dewC);
            }
            sum += dewC;
        }
        return sum;
    }

    @Benchmark
    @OperationsPerInvocation(POINTS)
    public double wetBulb() {
        double sum = 0;
        for (int i = 0; i < POINTS; i++) {
            double humidity = MoistAir.humidityRatioKgPerKg(vapourPa[i], AirConstants.STANDARD_PRESSURE_PA);
            sum += MoistAir.wetBulbC(airC[i], humidity, AirConstants.STANDARD_PRESSURE_PA);
        }
        return sum;
    }
}
