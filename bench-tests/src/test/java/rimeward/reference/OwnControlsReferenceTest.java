package rimeward.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rimeward.sim.physics.Defaults;
import rimeward.sim.physics.DialParameters;
import rimeward.sim.physics.DryerCase;
import rimeward.sim.physics.DryerParameters;
import rimeward.sim.physics.HeaterParameters;
import rimeward.sim.physics.HumidistatParameters;
import rimeward.sim.physics.MachineParameters;
import rimeward.sim.physics.StartState;
import rimeward.sim.physics.Tunnel;
import rimeward.sim.physics.VentFanParameters;

/**
 * The same cold night, with the machines switched by their own thermostat and humidistat: Hipparchus's DormandPrince853 with its own
 * event location against the simulator's steps cut where a contact turns. The limit of 0.02 K is our specification's.
 */
class OwnControlsReferenceTest {
    private static final double LOOK_S = 60;
    private static final int LOOKS = 14 * 60;

    private final DialParameters dial = new DialParameters(6, 1.5, 180);
    private final HumidistatParameters humidistat = new HumidistatParameters(66, 6, 600, 300);
    private final HeaterParameters heater = Defaults.heater(List.of(2500.0), dial);
    private final DryerParameters.Sorption dryer = dryer();
    private final StartState start = Defaults.evening();
    private final Tunnel tunnel =
            new Tunnel(Defaults.tunnel(), new MachineParameters(heater, dryer, VentFanParameters.none()), start);
    private final TunnelEquations equations = new TunnelEquations(Defaults.tunnel(), heater, dryer);
    private final OwnControls controls = new OwnControls(equations, dial, humidistat);
    private double restUntilS;
    private double fanUntilS;
    private int turns;

    /** Neither lock against the cold nor float, which the night above has no turn for. */
    private DryerParameters.Sorption dryer() {
        DryerParameters.Sorption usual = Defaults.sorptionDryer();
        DryerCase body = new DryerCase(
                usual.body().fanW(),
                usual.body().innerJPerK(),
                usual.body().blownWPerK(),
                usual.body().stillWPerK(),
                -30,
                Double.POSITIVE_INFINITY,
                humidistat);
        return new DryerParameters.Sorption(
                body,
                usual.regeneratorW(),
                usual.ratedKgPerH(),
                usual.residuePercent(),
                usual.perK(),
                usual.warmRiseK(),
                usual.runOnS());
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 5})
    void agreesWithDormandPrince853WhereContactsTurnByThemselves(double stepS) {
        tunnel.heater().contact(0, true);
        tunnel.dryer().contact(true);
        controls.dialOpen = start.airC() >= dial.opensC();
        controls.moist = start.rhPercent() >= humidistat.satisfiedPercent() + humidistat.differentialPercent();
        double[] y = {
            start.airC(),
            start.massC(),
            start.airC(),
            start.airC(),
            tunnel.humidityKgPerKg(),
            0,
            0,
            start.mediumWaterKg(),
            start.airC(),
            start.rhPercent()
        };
        for (int look = 0; look < LOOKS; look++) {
            double atS = look * LOOK_S;
            y = follow(y, atS, atS + LOOK_S);
            for (int i = 0; i < LOOK_S / stepS; i++) {
                ColdNight.show(tunnel, atS + (i + 0.5) * stepS);
                tunnel.advance(stepS);
            }
            assertThat(tunnel.airC()).as("air, minute %d", look).isCloseTo(y[TunnelEquations.AIR], within(0.02));
            assertThat(tunnel.massC()).as("mass, minute %d", look).isCloseTo(y[TunnelEquations.MASS], within(0.02));
            assertThat(tunnel.humidityKgPerKg()).isCloseTo(y[TunnelEquations.HUMIDITY], within(2e-5));
        }
        assertThat(turns).as("contacts turned").isGreaterThan(20);
        assertThat(tunnel.collectedKg()).isGreaterThan(0.2);
    }

    /** Integrates from turn to turn: of a contact, or of the dryer's two clocks. */
    private double[] follow(double[] y, double fromS, double toS) {
        double atS = fromS;
        double[] state = y;
        while (atS < toS) {
            settle(atS);
            double untilS = Math.min(toS, Math.min(after(atS, restUntilS), after(atS, fanUntilS)));
            ODEStateAndDerivative end = integrate(state, atS, untilS);
            state = end.getPrimaryState();
            atS = end.getTime();
            if (atS < untilS) {
                turn(state, atS);
            }
        }
        return state;
    }

    private static double after(double nowS, double timerS) {
        return timerS > nowS ? timerS : Double.POSITIVE_INFINITY;
    }

    private void settle(double atS) {
        boolean ran = equations.dryerRuns;
        equations.heaterW = controls.dialOpen ? 0 : 2500;
        equations.dryerRuns = controls.moist && atS >= restUntilS;
        if (ran && !equations.dryerRuns) {
            fanUntilS = atS + dryer.runOnS();
        }
        equations.dryerFanRuns = equations.dryerRuns || atS < fanUntilS;
    }

    /** Which contact turned: the one whose number stands at its limit. */
    private void turn(double[] y, double atS) {
        double dialK = Math.abs(
                y[OwnControls.BIMETAL] - (controls.dialOpen ? dial.opensC() - dial.differentialK() : dial.opensC()));
        turns++;
        if (dialK < 1e-5) {
            controls.dialOpen = !controls.dialOpen;
            return;
        }
        controls.moist = !controls.moist;
        if (!controls.moist) {
            restUntilS = atS + humidistat.restS();
        }
    }

    private ODEStateAndDerivative integrate(double[] y, double fromS, double toS) {
        double[] absolute = {1e-6, 1e-6, 1e-5, 1e-5, 1e-9, 1e-7, 1e-7, 1e-5, 1e-6, 1e-5};
        double[] relative = {1e-9, 1e-9, 1e-9, 1e-9, 1e-9, 1e-9, 1e-9, 1e-9, 1e-9, 1e-9};
        DormandPrince853Integrator integrator = new DormandPrince853Integrator(1e-6, 60, absolute, relative);
        integrator.addEventDetector(controls.dialTurns());
        integrator.addEventDetector(controls.humidistatTurns());
        return integrator.integrate(controls, new ODEState(fromS, y), toS);
    }
}
