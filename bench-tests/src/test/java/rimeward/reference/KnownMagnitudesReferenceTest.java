package rimeward.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rimeward.air.MoistAir;
import rimeward.air.RelativeHumidity;
import rimeward.sim.physics.Defaults;
import rimeward.sim.physics.DialParameters;
import rimeward.sim.physics.MachineParameters;
import rimeward.sim.physics.StartState;
import rimeward.sim.physics.Tunnel;
import rimeward.sim.physics.VentFanParameters;
import rimeward.sim.physics.WinklerCurves;

/** The default tunnel against what growers see. Common practice, no source, so the tolerances are wide. */
class KnownMagnitudesReferenceTest {
    private static final double PRESSURE_PA = MoistAir.pressurePa(310);

    private static Tunnel tunnel(MachineParameters machines, double outsideC) {
        Tunnel tunnel = new Tunnel(Defaults.tunnel(), machines, new StartState(outsideC + 3, outsideC + 4, 85, 140, 0));
        double vapourPa = RelativeHumidity.vapourFromOverWaterPa(outsideC, 93);
        double humidity = MoistAir.humidityRatioKgPerKg(vapourPa, PRESSURE_PA);
        tunnel.outside().set(outsideC, humidity, PRESSURE_PA, 1.5, outsideC - 6, 0);
        return tunnel;
    }

    private static double rhPercent(Tunnel tunnel) {
        return RelativeHumidity.overWaterPercent(tunnel.airC(), tunnel.vapourPa());
    }

    private static void advanceUntil(Tunnel tunnel, BooleanSupplier something) {
        for (int i = 0; i < 8640 && !something.getAsBoolean(); i++) {
            tunnel.advance(10);
        }
        assertThat(something.getAsBoolean()).as("happened within a day").isTrue();
    }

    @Test
    void aSorptionDryerOverADampNight() {
        // ~3 K above outside, 85 % down to about 40 %, about 4 l, for a 600 W dryer in some 19 m² of bubble-lined film.
        Tunnel tunnel = tunnel(Defaults.machines(), 4);
        tunnel.dryer().contact(true);
        double driestPercent = 100;
        for (int hour = 0; hour < 14; hour++) {
            tunnel.advance(3600);
            driestPercent = Math.min(driestPercent, rhPercent(tunnel));
        }
        assertThat(tunnel.airC() - 4).isBetween(2.0, 5.0);
        assertThat(driestPercent).isBetween(33.0, 52.0);
        assertThat(tunnel.collectedKg()).isBetween(2.5, 5.5);
    }

    @Test
    void aSatisfiedDryerStaysOffForHalfAnHourOrMore() {
        Tunnel tunnel = tunnel(Defaults.machines(), 0); // dry enough outside for it to be satisfied
        tunnel.dryer().contact(true);
        advanceUntil(tunnel, () -> !tunnel.dryer().isSatisfied());
        advanceUntil(tunnel, () -> tunnel.dryer().isSatisfied());
        double satisfiedS = tunnel.elapsedS();
        advanceUntil(tunnel, () -> !tunnel.dryer().isSatisfied());
        assertThat((tunnel.elapsedS() - satisfiedS) / 60).isBetween(25.0, 65.0);
    }

    @Test
    void oneKilowattHoldsFiveDegreesAtTwoBelow() {
        // 1 kW behind a thermostat at 5 °C with a differential of 2 K, at −2 °C outside.
        MachineParameters machines = new MachineParameters(
                Defaults.heater(List.of(1000.0), new DialParameters(6, 2, 60)),
                Defaults.sorptionDryer(),
                VentFanParameters.none());
        Tunnel tunnel = tunnel(machines, -2);
        tunnel.heater().contact(0, true);
        tunnel.advance(6 * 3600);
        double heaterStartJ = tunnel.heater().energyJ(0);
        double lowestC = 100;
        for (int i = 0; i < 6 * 360; i++) {
            tunnel.advance(10);
            lowestC = Math.min(lowestC, tunnel.airC());
        }
        double meanW = (tunnel.heater().energyJ(0) - heaterStartJ) / (6 * 3600);
        assertThat(lowestC).isGreaterThan(2.5);
        assertThat(meanW).isBetween(500.0, 1000.0);
    }

    @Test
    void unheatedItNeedsNoMachineOnNightsAboveFive() {
        Tunnel tunnel = tunnel(Defaults.machines(), 5.5);
        tunnel.advance(14 * 3600);
        assertThat(tunnel.coldestBenchC()).isGreaterThan(4);
    }

    @ParameterizedTest(name = "{0} °C")
    @CsvSource({"10, 0.35", "5, 0.15"})
    void ordinaryDehumidifiersAllButStopInTheCold(double airC, double mostShare) {
        // Ordinary ones stop below about 10 to 15 °C; what is left of their rating at the usual 60 %.
        assertThat(WinklerCurves.waterShare(airC, 60)).isLessThan(mostShare);
    }

    @Test
    void aColdRatedDryerWorksNearOneDegree() {
        Tunnel tunnel = tunnel(Defaults.machines(), -0.5);
        tunnel.dryer().contact(true);
        tunnel.advance(4 * 3600);
        assertThat(tunnel.airC()).isBetween(1.0, 3.0);
        assertThat(tunnel.collectedKg()).isGreaterThan(0.4);
    }
}
