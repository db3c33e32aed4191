package rimeward.sim.device;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import org.junit.jupiter.api.Test;
import rimeward.core.reading.Reading;
import rimeward.core.reading.Senses;
import rimeward.core.reading.Signal;
import rimeward.sim.fault.Fault;
import rimeward.sim.fault.FaultKind;
import rimeward.sim.world.SteadyWorld;
import rimeward.sim.world.World;
import rimeward.site.RelaySet;

class MetersAndRelaysTest {

    @Test
    void metersFloatAndDoorTellWhatIsSo() {
        World world = SteadyWorld.with(
                Fault.of(100, FaultKind.TANK_FULL, 100),
                Fault.of(100, FaultKind.DOOR_OPEN, 100),
                Fault.of(300, FaultKind.POWER_FEEDBACK_LOST, 100));
        SimSensors sensors =
                new SimSensors(world, DeviceSite.SITE, Collections.nCopies(2, SensorVices.usual()), true, 1);
        world.contact(SteadyWorld.STAGE_1, true);
        world.advanceTo(50);
        Senses calm = sensors.latch();
        assertThat(calm.powersW().get(0)).isEqualTo(new Reading.Value(1000, 0));
        assertThat(calm.powersW().get(1)).isEqualTo(Reading.NOT_FITTED);
        assertThat(calm.powersW().get(2)).isEqualTo(new Reading.Value(0, 0));
        assertThat(calm.tankFull()).isEqualTo(Signal.OFF);
        assertThat(calm.doorOpen()).isEqualTo(Signal.OFF);
        world.advanceTo(150);
        assertThat(sensors.latch().tankFull()).isEqualTo(Signal.ON);
        assertThat(sensors.latch().doorOpen()).isEqualTo(Signal.ON);
        world.advanceTo(350);
        assertThat(sensors.latch().powersW().get(0)).isEqualTo(Reading.NO_ANSWER);
    }

    @Test
    void relaysMoveALittleLateAndOnlyThoseThatMust() {
        World world = SteadyWorld.with();
        SimRelays relays = new SimRelays(world, 1);
        relays.close(RelaySet.of(0b0101));
        assertThat(world.truth().isContactClosed(SteadyWorld.STAGE_1)).isFalse();
        world.advanceTo(5);
        assertThat(world.truth().isContactClosed(SteadyWorld.STAGE_1)).isTrue();
        assertThat(world.truth().isContactClosed(SteadyWorld.DRYER)).isTrue();
        assertThat(world.truth().energyJ(SteadyWorld.STAGE_1)).isBetween(4950.0, 4995.0);
        relays.close(RelaySet.of(0b0111));
        world.advanceTo(10);
        assertThat(world.truth().starts(SteadyWorld.STAGE_1)).isEqualTo(1);
        assertThat(world.truth().starts(SteadyWorld.STAGE_2)).isEqualTo(1);
    }
}
