package rimeward.sim.fault;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class FaultClockTest {

    @Test
    void aFaultBeginsLastsAndEnds() {
        FaultClock clock = new FaultClock(FaultPlan.of(Fault.of(100, FaultKind.HEATER_FUSE, 50)));
        assertThat(clock.advanceTo(99)).isFalse();
        assertThat(clock.isActive(FaultKind.HEATER_FUSE)).isFalse();
        assertThat(clock.advanceTo(100)).isTrue();
        assertThat(clock.isActive(FaultKind.HEATER_FUSE)).isTrue();
        assertThat(clock.advanceTo(149.9)).isFalse();
        assertThat(clock.advanceTo(150)).isTrue();
        assertThat(clock.isActive(FaultKind.HEATER_FUSE)).isFalse();
        assertThat(clock.nextChangeS()).isInfinite();
    }

    @Test
    void targetsAreToldApart() {
        FaultClock clock = new FaultClock(FaultPlan.of(
                new Fault(0, FaultKind.SENSOR_OFFSET, "north", 100, 3),
                new Fault(10, FaultKind.SENSOR_OFFSET, "north", 100, 1.5),
                new Fault(0, FaultKind.SENSOR_OFFSET, "south", 100, -2)));
        clock.advanceTo(20);
        assertThat(clock.magnitude(FaultKind.SENSOR_OFFSET, "north")).isEqualTo(4.5);
        assertThat(clock.magnitude(FaultKind.SENSOR_OFFSET, "south")).isEqualTo(-2);
        assertThat(clock.isActive(FaultKind.SENSOR_OFFSET, "east")).isFalse();
        assertThat(clock.magnitude(FaultKind.SENSOR_OFFSET, "east")).isZero();
    }

    @Test
    void momentsAreTellableOnceAndDoNotLast() {
        FaultClock clock = new FaultClock(
                FaultPlan.of(Fault.of(30, FaultKind.CONTROLLER_RESTART, 0), Fault.of(40, FaultKind.DOOR_OPEN, 5)));
        assertThat(clock.advanceTo(32)).isTrue();
        assertThat(clock.begun()).extracting(Fault::kind).containsExactly(FaultKind.CONTROLLER_RESTART);
        assertThat(clock.isActive(FaultKind.CONTROLLER_RESTART)).isFalse();
        assertThat(clock.advanceTo(40)).isTrue();
        assertThat(clock.begun()).extracting(Fault::kind).containsExactly(FaultKind.DOOR_OPEN);
    }

    @Test
    void aLeapOverAWholeFaultStillTellsOfIt() {
        FaultClock clock = new FaultClock(FaultPlan.of(Fault.of(30, FaultKind.DOOR_OPEN, 5)));
        assertThat(clock.advanceTo(1000)).isTrue();
        assertThat(clock.begun()).hasSize(1);
        assertThat(clock.isActive(FaultKind.DOOR_OPEN)).isFalse();
    }

    @Test
    void aFaultMayLastForEver() {
        FaultClock clock = new FaultClock(FaultPlan.of(Fault.of(1, FaultKind.DRYER_TRIP, Double.POSITIVE_INFINITY)));
        clock.advanceTo(1e9);
        assertThat(clock.isActive(FaultKind.DRYER_TRIP)).isTrue();
    }
}
