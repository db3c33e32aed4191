package rimeward.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.hipparchus.ode.ODEIntegrator;
import org.hipparchus.ode.ODEState;
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
 * The simulator against a high-accuracy adaptive integrator, Hipparchus's DormandPrince853, over a cold night in which the film wets,
 * freezes, thaws and dries, heater and dryer by turns. The limit of 0.02 K is our specification's.
 */
class IntegratorReferenceTest {
    private static final double SPELL_S = 900;
    private static final int SPELLS = 56;

    private final HeaterParameters heater = Defaults.heater(List.of(2000.0), new DialParameters(40, 2, 180));
    private final DryerParameters.Sorption dryer = tireless(Defaults.sorptionDryer());
    private final StartState start = Defaults.evening();
    private final Tunnel tunnel =
            new Tunnel(Defaults.tunnel(), new MachineParameters(heater, dryer, VentFanParameters.none()), start);
    private final TunnelEquations equations = new TunnelEquations(Defaults.tunnel(), heater, dryer);

    /** Without humidistat, lock and float, so that both sides are switched by the test alone. */
    private static DryerParameters.Sorption tireless(DryerParameters.Sorption usual) {
        DryerCase body = new DryerCase(
                usual.body().fanW(),
                usual.body().innerJPerK(),
                usual.body().blownWPerK(),
                usual.body().stillWPerK(),
                -30,
                Double.POSITIVE_INFINITY,
                new HumidistatParameters(0, 0.5, 0, 300));
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
    @ValueSource(doubles = {1, 5, 10})
    void agreesWithDormandPrince853(double stepS) {
        double[] y = {
            start.airC(),
            start.massC(),
            start.airC(),
            start.airC(),
            tunnel.humidityKgPerKg(),
            0,
            0,
            start.mediumWaterKg()
        };
        boolean froze = false;
        boolean thawed = false;
        for (int spell = 0; spell < SPELLS; spell++) {
            double atS = spell * SPELL_S;
            equations.heaterW = spell % 4 == 1 ? 2000 : 0;
            equations.dryerRuns = spell % 8 == 6;
            equations.dryerFanRuns = spell % 8 >= 6;
            y = integrate(y, atS, atS + dryer.runOnS());
            equations.dryerFanRuns = equations.dryerRuns; // the fan has run on
            y = integrate(y, atS + dryer.runOnS(), atS + SPELL_S);
            simulate(atS, stepS);
            compare(y, spell);
            froze |= y[TunnelEquations.FROST] > 0.02;
            thawed |= froze && y[TunnelEquations.WATER] > 0.01;
        }
        assertThat(froze && thawed).as("the night had frost and thaw").isTrue();
        assertThat(tunnel.collectedKg()).isGreaterThan(0.2);
    }

    private double[] integrate(double[] y, double fromS, double toS) {
        double[] absolute = {1e-6, 1e-6, 1e-5, 1e-5, 1e-9, 1e-7, 1e-7, 1e-5};
        double[] relative = {1e-9, 1e-9, 1e-9, 1e-9, 1e-9, 1e-9, 1e-9, 1e-9};
        ODEIntegrator integrator = new DormandPrince853Integrator(1e-6, 60, absolute, relative);
        return integrator.integrate(equations, new ODEState(fromS, y), toS).getPrimaryState();
    }

    private void simulate(double fromS, double stepS) {
        tunnel.heater().contact(0, equations.heaterW > 0);
        tunnel.dryer().contact(equations.dryerRuns);
        int steps = (int) (SPELL_S / stepS);
        for (int i = 0; i < steps; i++) {
            ColdNight.show(tunnel, fromS + (i + 0.5) * stepS);
            tunnel.advance(stepS);
        }
    }

    private void compare(double[] y, int spell) {
        String when = "spell " + spell;
        assertThat(tunnel.airC()).as(when).isCloseTo(y[TunnelEquations.AIR], within(0.02));
        assertThat(tunnel.massC()).as(when).isCloseTo(y[TunnelEquations.MASS], within(0.02));
        assertThat(tunnel.elementC()).as(when).isCloseTo(y[TunnelEquations.ELEMENT], within(0.05));
        assertThat(tunnel.dryerC()).as(when).isCloseTo(y[TunnelEquations.ROTOR], within(0.05));
        assertThat(tunnel.humidityKgPerKg()).as(when).isCloseTo(y[TunnelEquations.HUMIDITY], within(1e-5));
        assertThat(tunnel.filmWaterKg()).as(when).isCloseTo(y[TunnelEquations.WATER], within(0.005));
        assertThat(tunnel.filmFrostKg()).as(when).isCloseTo(y[TunnelEquations.FROST], within(0.005));
        assertThat(tunnel.mediumWaterKg()).as(when).isCloseTo(y[TunnelEquations.MEDIUM], within(0.005));
    }
}
