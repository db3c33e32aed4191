package rimeward.sim.device;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static rimeward.sim.device.DeviceSite.BENCH;
import static rimeward.sim.device.DeviceSite.OUTSIDE;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import rimeward.core.reading.Reading;
import rimeward.core.reading.Senses;
import rimeward.sim.fault.Fault;
import rimeward.sim.fault.FaultKind;
import rimeward.sim.world.SteadyWorld;
import rimeward.sim.world.World;

class SimSensorTest {
    private static final double FOR_EVER_S = Double.POSITIVE_INFINITY;

    private static SimSensors sensors(World world, SensorVices vices) {
        return new SimSensors(world, DeviceSite.SITE, Collections.nCopies(2, vices), true, 1);
    }

    private static double number(Reading reading) {
        assertThat(reading).isInstanceOf(Reading.Value.class);
        return ((Reading.Value) reading).value();
    }

    private static double airC(Senses senses, int sensor) {
        return number(senses.sensors().get(sensor).airC());
    }

    private static double rhPercent(Senses senses, int sensor) {
        return number(senses.sensors().get(sensor).rhPercent());
    }

    @Test
    void withoutVicesASensorTellsTheTruthToItsLastDigit() {
        World world = SteadyWorld.with();
        SimSensors sensors = sensors(world, SensorVices.none());
        world.advanceTo(600);
        Senses senses = sensors.latch();
        double northC = world.truth().benchC(world.truth().bench("north bench"));
        assertThat(airC(senses, BENCH)).isCloseTo(northC, within(0.00051));
        assertThat(airC(senses, OUTSIDE)).isCloseTo(SteadyWorld.OUTSIDE_C, within(0.00051));
        assertThat(rhPercent(senses, BENCH))
                .isCloseTo(
                        Math.min(100, world.truth().benchRhPercent(world.truth().bench("north bench"))), within(0.001));
    }

    @Test
    void aSecondLookAtOneMomentShowsTheSame() {
        World world = SteadyWorld.with();
        SimSensors sensors = sensors(world, SensorVices.none());
        world.advanceTo(600);
        double firstC = airC(sensors.latch(), BENCH);
        assertThat(airC(sensors.latch(), BENCH)).isEqualTo(firstC);
    }

    @Test
    void aSlowSensorComesAfterTheAir() {
        World world = SteadyWorld.with();
        SimSensors quick = sensors(world, SensorVices.none());
        SimSensors slow = sensors(world, new SensorVices(600, 0, 0, 0.001, 0, 0, 0, 0.001));
        world.contact(SteadyWorld.STAGE_1, true);
        world.contact(SteadyWorld.STAGE_2, true);
        for (int tick = 1; tick <= 60; tick++) {
            world.advanceTo(5.0 * tick);
            quick.latch();
            slow.latch();
        }
        assertThat(airC(slow.latch(), BENCH)).isLessThan(airC(quick.latch(), BENCH) - 0.5);
    }

    @Test
    void offsetDriftAndResolutionShow() {
        World world = SteadyWorld.with();
        SimSensors sensors = sensors(world, new SensorVices(0, 1, 0, 0.25, 2, -4, 0, 1));
        world.advanceTo(43_200);
        Senses senses = sensors.latch();
        assertThat(airC(senses, OUTSIDE)).isCloseTo(SteadyWorld.OUTSIDE_C + 1 + 1, within(0.13));
        assertThat(airC(senses, OUTSIDE) / 0.25).isCloseTo(Math.rint(airC(senses, OUTSIDE) / 0.25), within(1e-9));
        assertThat(rhPercent(senses, OUTSIDE)).isEqualTo(Math.rint(rhPercent(senses, OUTSIDE)));
    }

    @Test
    void noiseHasItsSpreadAndIsTheSameForTheSameSeed() {
        SensorVices noisy = new SensorVices(0, 0, 0.5, 0.001, 0, 0, 0, 0.001);
        World world = SteadyWorld.with();
        SimSensors one = sensors(world, noisy);
        SimSensors same = sensors(world, noisy);
        double squares = 0;
        for (int tick = 1; tick <= 2000; tick++) {
            world.advanceTo(5.0 * tick);
            double seenC = airC(one.latch(), OUTSIDE);
            assertThat(airC(same.latch(), OUTSIDE)).isEqualTo(seenC);
            squares += (seenC - SteadyWorld.OUTSIDE_C) * (seenC - SteadyWorld.OUTSIDE_C);
        }
        assertThat(Math.sqrt(squares / 2000)).isBetween(0.46, 0.54);
    }

    @Test
    void eachSensorFaultDoesWhatItsNameSays() {
        assertThat(outsideAirC(new Fault(0, FaultKind.SENSOR_OFFSET, "outside", FOR_EVER_S, 3)))
                .isCloseTo(SteadyWorld.OUTSIDE_C + 3, within(0.001));
        assertThat(outsideAirC(new Fault(0, FaultKind.SENSOR_DRIFT, "outside", FOR_EVER_S, 12)))
                .isCloseTo(SteadyWorld.OUTSIDE_C + 0.25, within(0.01));
        Senses wet = after1800s(Fault.of(0, FaultKind.SENSOR_WET, "outside", FOR_EVER_S));
        assertThat(airC(wet, OUTSIDE)).isLessThan(SteadyWorld.OUTSIDE_C - 0.2);
        assertThat(rhPercent(wet, OUTSIDE)).isEqualTo(100);
        Senses deaf = after1800s(Fault.of(0, FaultKind.HUMIDITY_LOST, "outside", FOR_EVER_S));
        assertThat(deaf.sensors().get(OUTSIDE).rhPercent()).isEqualTo(Reading.NO_ANSWER);
        assertThat(airC(deaf, OUTSIDE)).isCloseTo(SteadyWorld.OUTSIDE_C, within(0.001));
        for (Fault lost : List.of(
                Fault.of(0, FaultKind.SENSOR_LOST, "outside", FOR_EVER_S),
                Fault.of(0, FaultKind.OUTSIDE_SENSOR_LOST, FOR_EVER_S))) {
            Senses senses = after1800s(lost);
            assertThat(senses.sensors().get(OUTSIDE).airC()).isEqualTo(Reading.NO_ANSWER);
            assertThat(senses.sensors().get(BENCH).airC()).isInstanceOf(Reading.Value.class);
        }
    }

    private static double outsideAirC(Fault fault) {
        return airC(after1800s(fault), OUTSIDE);
    }

    private static Senses after1800s(Fault fault) {
        World world = SteadyWorld.with(fault);
        SimSensors sensors = sensors(world, SensorVices.none());
        world.advanceTo(1800);
        return sensors.latch();
    }

    @Test
    void aFrozenSensorRepeatsItself() {
        World world = SteadyWorld.with(Fault.of(60, FaultKind.SENSOR_FROZEN, "north", 3000));
        SimSensors sensors = sensors(world, SensorVices.usual());
        world.advanceTo(55);
        double beforeC = airC(sensors.latch(), BENCH);
        for (int tick = 12; tick < 600; tick++) {
            world.advanceTo(5.0 * tick);
            assertThat(airC(sensors.latch(), BENCH)).isEqualTo(beforeC);
        }
        world.advanceTo(3100);
        assertThat(airC(sensors.latch(), BENCH)).isNotEqualTo(beforeC);
    }

    @Test
    void spikesAndNoiseComeAndGo() {
        World world = SteadyWorld.with(
                new Fault(0, FaultKind.SENSOR_SPIKE, "outside", 5000, 50),
                new Fault(0, FaultKind.SENSOR_NOISE, "north", 5000, 2));
        SimSensors sensors = sensors(world, SensorVices.none());
        int spikes = 0;
        int quiet = 0;
        for (int tick = 1; tick <= 2000; tick++) {
            world.advanceTo(5.0 * tick);
            double farK = Math.abs(airC(sensors.latch(), OUTSIDE) - SteadyWorld.OUTSIDE_C);
            spikes += tick < 1000 && farK > 1 ? 1 : 0;
            quiet += tick > 1000 && farK < 0.01 ? 1 : 0;
        }
        assertThat(spikes).isBetween(5, 60);
        assertThat(quiet).isEqualTo(1000);
    }
}
