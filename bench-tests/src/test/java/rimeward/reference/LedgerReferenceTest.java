package rimeward.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rimeward.sim.fault.FaultKind;
import rimeward.sim.fault.FaultPlan;
import rimeward.sim.fault.RandomFaults;
import rimeward.sim.fault.SeededStream;
import rimeward.sim.physics.Defaults;
import rimeward.sim.physics.MachineParameters;
import rimeward.sim.physics.VentFanParameters;
import rimeward.sim.weather.Place;
import rimeward.sim.weather.Recipe;
import rimeward.sim.world.GrowerRounds;
import rimeward.sim.world.World;
import rimeward.sim.world.WorldPlan;

/** First law and conservation of mass: heat and water close to 1e-9 of their turnover, in random months with random faults. */
class LedgerReferenceTest {
    private static final int DAYS = 30;
    private static final long START_EPOCH_S = 1_730_419_200L;
    private static final List<String> MACHINES = List.of("stage-1", "stage-2", "dryer", "fan");

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14})
    void heatAndWaterClose(long seed) {
        World world = new World(plan(seed));
        SeededStream chance = SeededStream.named(seed, "switching");
        for (int tick = 1; tick <= DAYS * 17_280; tick++) {
            if (tick % 100 == 0) {
                world.contact(chance.below(MACHINES.size()), chance.below(2) == 1, chance.between(0, 0.05));
            }
            world.advanceTo(5.0 * tick);
        }
        assertThat(world.truth().heat().closure()).isLessThan(1e-9);
        assertThat(world.truth().water().closure()).isLessThan(1e-9);
        assertThat(world.truth().heat().turnoverJ()).isGreaterThan(1e9);
        assertThat(world.truth().water().turnoverKg()).isGreaterThan(20);
    }

    private static WorldPlan plan(long seed) {
        FaultPlan faults = new RandomFaults(
                        Arrays.asList(FaultKind.values()),
                        List.of("north"),
                        List.of("stage-1", "stage-2"),
                        4,
                        60,
                        20_000)
                .plan(seed, DAYS * 86_400.0);
        return new WorldPlan(
                Defaults.tunnel(),
                new MachineParameters(
                        Defaults.heater(),
                        seed % 2 == 0 ? Defaults.sorptionDryer() : Defaults.compressorDryer(),
                        new VentFanParameters(300, 40)),
                MACHINES,
                Defaults.evening(),
                Recipe.uplandWinter(new Place(54.4, -2.5, 310), START_EPOCH_S, DAYS + 1, seed)
                        .make(),
                START_EPOCH_S,
                faults,
                new GrowerRounds(8 * 3600, 86_400));
    }
}
