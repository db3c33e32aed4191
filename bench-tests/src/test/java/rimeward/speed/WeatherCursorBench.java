package rimeward.speed;

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
import rimeward.sim.weather.Place;
import rimeward.sim.weather.Recipe;
import rimeward.sim.weather.WeatherSeries;

/** What the weather costs a step of 5 s: one move and all eight readings; and a whole winter's making. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(2)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class WeatherCursorBench {

    private static final int STEPS = 17_280; // a day
    private static final long START = 1_730_419_200L;

    private final Recipe winter = Recipe.uplandWinter(new Place(54.4, -2.5, 300), START, 180, 1);
    private final WeatherSeries series = winter.make();

    @Benchmark
    @OperationsPerInvocation(STEPS)
    public double stepThroughADay() {
        var cursor = series.cursor();
        double sum = 0;
        for (int i = 0; i < STEPS; i++) {
            cursor.moveTo(START + 5L * i);
            sum += cursor.outsideAirC() + cursor.vapourPa() + cursor.humidityKgPerKg() + cursor.windMPerS();
            sum += cursor.pressurePa() + cursor.cloudFraction() + cursor.globalRadiationWPerM2() + cursor.skyC();
        }
        return sum;
    }

    @Benchmark
    public WeatherSeries makeAWinter() {
        return winter.make();
    }
}
