package rimeward.sim.world;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static rimeward.sim.world.SteadyWorld.DRYER;
import static rimeward.sim.world.SteadyWorld.FAN;
import static rimeward.sim.world.SteadyWorld.STAGE_1;
import static rimeward.sim.world.SteadyWorld.STAGE_2;

import java.util.List;
import org.junit.jupiter.api.Test;
import rimeward.sim.fault.Fault;
import rimeward.sim.fault.FaultKind;
import rimeward.sim.fault.FaultPlan;

class WorldTest {
    private static final double FOR_EVER_S = Double.POSITIVE_INFINITY;

    @Test
    void aContactClosesAsLateAsItsRelayIs() {
        World world = SteadyWorld.with();
        world.contact(STAGE_1, true, 1.5);
        assertThat(world.truth().isContactClosed(STAGE_1)).isFalse();
        world.advanceTo(5);
        assertThat(world.truth().isContactClosed(STAGE_1)).isTrue();
        assertThat(world.truth().energyJ(STAGE_1)).isCloseTo(3500, within(1e-6));
    }

    @Test
    void aCommandThatIsRepeatedOnItsWayIsNeitherLostNorDelayed() {
        World world = SteadyWorld.with();
        world.contact(STAGE_1, true, 1.5);
        world.contact(STAGE_1, true, 3);
        world.advanceTo(5);
        assertThat(world.truth().energyJ(STAGE_1)).isCloseTo(3500, within(1e-6));
    }

    @Test
    void theOppositeOfWhatIsOnItsWayFollowsIt() {
        World world = SteadyWorld.with();
        world.contact(STAGE_1, true, 1.5);
        world.contact(STAGE_1, false, 3);
        world.advanceTo(5);
        assertThat(world.truth().isContactClosed(STAGE_1)).isFalse();
        assertThat(world.truth().energyJ(STAGE_1)).isCloseTo(3000, within(1e-6));
    }

    @Test
    void everyMachineIsReachedByItsNumber() {
        World world = SteadyWorld.with();
        for (int machine = 0; machine < world.truth().machines(); machine++) {
            world.contact(machine, true);
        }
        world.advanceTo(5);
        assertThat(world.truth().powerW(STAGE_1)).isEqualTo(1000);
        assertThat(world.truth().powerW(STAGE_2)).isEqualTo(1000);
        assertThat(world.truth().powerW(DRYER)).isEqualTo(600);
        assertThat(world.truth().powerW(FAN)).isEqualTo(40);
    }

    @Test
    void closingsAreCounted() {
        World world = SteadyWorld.with();
        for (int i = 1; i <= 6; i++) {
            world.contact(STAGE_1, i % 2 == 1);
            world.contact(STAGE_2, true);
            world.advanceTo(60.0 * i);
        }
        assertThat(world.truth().starts(STAGE_1)).isEqualTo(3);
        assertThat(world.truth().starts(STAGE_2)).isEqualTo(1);
        assertThat(world.truth().starts(DRYER)).isZero();
    }

    @Test
    void aFaultBeginsBetweenTicksToTheSecond() {
        World world = SteadyWorld.with(Fault.of(7, FaultKind.HEATER_FUSE, 6));
        world.contact(STAGE_1, true);
        world.advanceTo(20);
        assertThat(world.truth().energyJ(STAGE_1)).isCloseTo(14_000, within(1e-6));
    }

    @Test
    void theLengthOfTicksDoesNotShow() {
        World fine = SteadyWorld.with(Fault.of(1234.5, FaultKind.DOOR_OPEN, 300.25));
        World coarse = SteadyWorld.with(Fault.of(1234.5, FaultKind.DOOR_OPEN, 300.25));
        fine.contact(DRYER, true);
        coarse.contact(DRYER, true);
        for (int i = 1; i <= 3600; i++) {
            fine.advanceTo(i);
        }
        coarse.advanceTo(3600);
        assertThat(coarse.truth().airC()).isCloseTo(fine.truth().airC(), within(1e-3));
        assertThat(coarse.truth().collectedKg()).isCloseTo(fine.truth().collectedKg(), within(1e-4));
    }

    @Test
    void aPowerCutStopsEverythingAndPassesByItself() {
        World world = SteadyWorld.with(Fault.of(600, FaultKind.POWER_CUT, 600));
        world.contact(STAGE_1, true);
        world.contact(DRYER, true);
        world.advanceTo(700);
        assertThat(world.isControllerPowered()).isFalse();
        assertThat(world.truth().powerW(STAGE_1)).isZero();
        assertThat(world.truth().powerW(DRYER)).isZero();
        world.advanceTo(1300);
        assertThat(world.isControllerPowered()).isTrue();
        assertThat(world.truth().powerW(STAGE_1)).isEqualTo(1000);
    }

    @Test
    void theResidualCurrentDeviceLeavesTheControllerAlive() {
        World world = SteadyWorld.with(Fault.of(0, FaultKind.RESIDUAL_CURRENT, FOR_EVER_S));
        world.contact(STAGE_1, true);
        world.contact(FAN, true);
        world.advanceTo(60);
        assertThat(world.isControllerPowered()).isTrue();
        assertThat(world.truth().powerW(STAGE_1)).isZero();
        assertThat(world.truth().powerW(FAN)).isZero();
    }

    @Test
    void aWeldedRelayHeatsUnaskedAndAStuckOneDoesNotWhenAsked() {
        World world = SteadyWorld.with(
                Fault.of(0, FaultKind.HEATER_RELAY_WELDED, "stage-2", 600),
                Fault.of(0, FaultKind.HEATER_RELAY_OPEN, "stage-1", 600),
                Fault.of(0, FaultKind.DRYER_RELAY_WELDED, 600));
        world.contact(STAGE_1, true);
        world.advanceTo(300);
        assertThat(world.truth().powerW(STAGE_1)).isZero();
        assertThat(world.truth().powerW(STAGE_2)).isEqualTo(1000);
        assertThat(world.truth().powerW(DRYER)).isEqualTo(600);
        world.advanceTo(700);
        assertThat(world.truth().powerW(STAGE_1)).isEqualTo(1000);
        assertThat(world.truth().powerW(STAGE_2)).isZero();
    }

    @Test
    void eachFaultOfTheDryerShowsInItsPowerOrItsTank() {
        for (FaultKind kind : List.of(
                FaultKind.DRYER_TRIP, FaultKind.TANK_FULL, FaultKind.HUMIDISTAT_OPEN, FaultKind.DRYER_RELAY_OPEN)) {
            World world = SteadyWorld.with(Fault.of(1000, kind, FOR_EVER_S));
            world.contact(DRYER, true);
            world.advanceTo(999);
            assertThat(world.truth().powerW(DRYER)).as(kind.label()).isEqualTo(600);
            world.advanceTo(1600);
            assertThat(world.truth().powerW(DRYER)).as(kind.label()).isZero();
        }
        World iced = SteadyWorld.with(Fault.of(0, FaultKind.DRYER_ICED, FOR_EVER_S));
        iced.contact(DRYER, true);
        iced.advanceTo(1600);
        assertThat(iced.truth().powerW(DRYER)).isEqualTo(600);
        assertThat(iced.truth().collectedKg()).isZero();
    }

    @Test
    void doorAndTearCostWarmth() {
        World whole = SteadyWorld.with();
        World open = SteadyWorld.with(Fault.of(0, FaultKind.DOOR_OPEN, 3600));
        World torn = SteadyWorld.with(Fault.of(0, FaultKind.COVER_TORN, 3600));
        for (World world : List.of(whole, open, torn)) {
            world.advanceTo(1800);
        }
        assertThat(open.truth().isDoorOpen()).isTrue();
        assertThat(open.truth().airC()).isLessThan(whole.truth().airC() - 0.5);
        assertThat(torn.truth().airC()).isLessThan(whole.truth().airC() - 0.1);
    }

    @Test
    void theGrowerEmptiesTheTankOnHerRounds() {
        GrowerRounds rounds = new GrowerRounds(100, 1000);
        World world =
                new World(SteadyWorld.plan(rounds, FaultPlan.none(), List.of("stage-1", "stage-2", "dryer", "fan")));
        world.contact(DRYER, true);
        world.advanceTo(99);
        assertThat(world.truth().tankKg()).isGreaterThan(1);
        world.advanceTo(101);
        assertThat(world.truth().tankKg()).isLessThan(0.001);
        world.advanceTo(1099);
        assertThat(world.truth().tankKg()).isGreaterThan(0.01);
        world.advanceTo(1101);
        assertThat(world.truth().tankKg()).isLessThan(0.001);
    }

    @Test
    void machinesWithoutNamesAreRefused() {
        assertThatThrownBy(() -> SteadyWorld.plan(GrowerRounds.none(), FaultPlan.none(), List.of("stage-1")))
                .hasMessageContaining("4 machines");
        assertThatThrownBy(() -> new GrowerRounds(-1, 10)).hasMessageContaining("-1.0 s");
    }

    @Test
    void theSameWorldTwiceIsTheSameToTheBit() {
        assertThat(night()).containsExactly(night());
    }

    private static long[] night() {
        World world = SteadyWorld.with(Fault.of(5000, FaultKind.POWER_CUT, 1000));
        world.contact(STAGE_1, true, 0.03);
        world.contact(DRYER, true, 0.02);
        for (int i = 1; i <= 5000; i++) {
            world.advanceTo(5.0 * i);
        }
        return new long[] {
            Double.doubleToRawLongBits(world.truth().airC()),
            Double.doubleToRawLongBits(world.truth().humidityKgPerKg()),
            Double.doubleToRawLongBits(world.truth().heat().turnoverJ()),
            Double.doubleToRawLongBits(world.truth().water().turnoverKg()),
        };
    }
}
