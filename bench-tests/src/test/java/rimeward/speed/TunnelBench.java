package rimeward.speed;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import rimeward.sim.fault.FaultPlan;
import rimeward.sim.physics.Defaults;
import rimeward.sim.physics.DryerParameters;
import rimeward.sim.physics.MachineParameters;
import rimeward.sim.physics.Tunnel;
import rimeward.sim.physics.VentFanParameters;
import rimeward.sim.weather.Place;
import rimeward.sim.weather.Recipe;
import rimeward.sim.weather.WeatherSeries;
import rimeward.sim.world.GrowerRounds;
import rimeward.sim.world.World;
import rimeward.sim.world.WorldPlan;

/** What physics costs a step of 5 s: the tunnel in still weather, and the whole world in a winter's. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(2)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class TunnelBench {
    private static final int STEPS = 17_280; // a day
    private static final int DAYS = 60;
    private static final long START = 1_730_419_200L;

    @Param({"sorption", "compressor"})
    public String dryer = "sorption";

    private final WeatherSeries weather =
            Recipe.uplandWinter(new Place(54.4, -2.5, 310), START, DAYS + 1, 1).make();

    private MachineParameters machines() {
        DryerParameters kind = dryer.equals("sorption") ? Defaults.sorptionDryer() : Defaults.compressorDryer();
        return new MachineParameters(Defaults.heater(), kind, VentFanParameters.none());
    }

    @Benchmark
    @OperationsPerInvocation(STEPS)
    public double tunnelThroughADay() {
        Tunnel tunnel = new Tunnel(Defaults.tunnel(), machines(), Defaults.evening());
        tunnel.dryer().contact(true);
        tunnel.outside().set(1, 0.0038, 97_600, 2, -8, 0);
        double sum = 0;
        for (int i = 0; i < STEPS; i++) {
            if (i % 240 == 0) {
                tunnel.heater().contact(0, i % 480 == 0);
            }
            tunnel.advance(5);
            sum += tunnel.coldestBenchC();
        }
        return sum;
    }

    @Benchmark
    @OperationsPerInvocation(STEPS * DAYS)
    public double worldThroughAWinter() {
        World world = new World(new WorldPlan(
                Defaults.tunnel(),
                machines(),
                List.of("stage-1", "stage-2", "dryer"),
                Defaults.evening(),
                weather,
                START,
                FaultPlan.none(),
                new GrowerRounds(8 * 3600, 86_400)));
        world.contact(2, true);
        double sum = 0;
        for (int tick = 1; tick <= STEPS * DAYS; tick++) {
            if (tick % 240 == 0) {
                world.contact(0, tick % 480 == 0, 0.02);
            }
            world.advanceTo(5.0 * tick);
            sum += world.truth().coldestBenchC();
        }
        return sum;
    }
}
