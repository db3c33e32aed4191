package rimeward.reference;

import java.util.Arrays;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketedUnivariateSolver;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.events.Action;
import org.hipparchus.ode.events.AdaptableInterval;
import org.hipparchus.ode.events.ODEEventDetector;
import org.hipparchus.ode.events.ODEEventHandler;
import rimeward.sim.physics.DialParameters;
import rimeward.sim.physics.HumidistatParameters;

/**
 * The tunnel's equations with what the machines' own thermostat and humidistat feel, each a first-order lag; somebody else's root finder
 * tells when one of them turns.
 */
final class OwnControls implements OrdinaryDifferentialEquation {
    static final int BIMETAL = 8;
    static final int HUMIDISTAT = 9;

    private final TunnelEquations tunnel;
    private final DialParameters dial;
    private final HumidistatParameters humidistat;

    boolean dialOpen;
    boolean moist;

    OwnControls(TunnelEquations tunnel, DialParameters dial, HumidistatParameters humidistat) {
        this.tunnel = tunnel;
        this.dial = dial;
        this.humidistat = humidistat;
    }

    @Override
    public int getDimension() {
        return tunnel.getDimension() + 2;
    }

    @Override
    public double[] computeDerivatives(double atS, double[] y) {
        double[] dy = Arrays.copyOf(tunnel.computeDerivatives(atS, y), getDimension());
        dy[BIMETAL] = (y[TunnelEquations.AIR] - y[BIMETAL]) / dial.lagS();
        dy[HUMIDISTAT] = (TunnelEquations.rhPercent(y) - y[HUMIDISTAT]) / humidistat.lagS();
        return dy;
    }

    /** The bimetal at the temperature where its contact turns next. */
    ODEEventDetector dialTurns() {
        double turnsC = dialOpen ? dial.opensC() - dial.differentialK() : dial.opensC();
        return new Turn(BIMETAL, turnsC, !dialOpen, 20);
    }

    /** The humidistat at the humidity where its contact turns next. */
    ODEEventDetector humidistatTurns() {
        double turnsPercent = humidistat.satisfiedPercent() + (moist ? 0 : humidistat.differentialPercent());
        return new Turn(HUMIDISTAT, turnsPercent, !moist, 20);
    }

    /** Stops the integration where one number passes a limit in one direction. */
    private record Turn(int of, double limit, boolean rising, double lookEveryS) implements ODEEventDetector {
        @Override
        public double g(ODEStateAndDerivative state) {
            return state.getPrimaryState()[of] - limit;
        }

        @Override
        public AdaptableInterval getMaxCheckInterval() {
            return AdaptableInterval.of(lookEveryS);
        }

        @Override
        public int getMaxIterationCount() {
            return 100;
        }

        @Override
        public BracketedUnivariateSolver<UnivariateFunction> getSolver() {
            return new BracketingNthOrderBrentSolver(0, 1e-6, 0, 5);
        }

        @Override
        public ODEEventHandler getHandler() {
            return (state, detector, increasing) -> increasing == rising ? Action.STOP : Action.CONTINUE;
        }
    }
}
