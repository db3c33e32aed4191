package rimeward.sim.bound;

import rimeward.air.AirConstants;
import rimeward.sim.physics.BenchParameters;
import rimeward.sim.physics.HeaterParameters;
import rimeward.sim.physics.TunnelParameters;
import rimeward.sim.world.Truth;

/**
 * Keeps the coldest bench on a line with a heater that gives any power and sees the truth: what the element must be so that the air, which
 * moved as it did in the last step, moves to the line instead. For one thread.
 */
final class Rider {
    /** Comes to the line with this time constant, s. Own choice: a little slower than the element. */
    private static final double EASE_S = 60;

    /** Air near 5 °C, kg/m³; only for the gain. */
    private static final double AIR_KG_PER_M3 = 1.25;

    private final HeaterParameters heater;
    private final double airJPerK;
    private boolean begun;
    private double lastC;
    private double lastElementC;

    Rider(TunnelParameters tunnel, HeaterParameters heater) {
        this.heater = heater;
        double leastShare = 1;
        for (BenchParameters bench : tunnel.benches()) {
            leastShare = Math.min(leastShare, 1 + bench.liftShare());
        }
        airJPerK = (tunnel.quickJPerK() + tunnel.volumeM3() * AIR_KG_PER_M3 * AirConstants.DRY_AIR_HEAT_J_PER_KG_K)
                / leastShare;
    }

    /** Power for the step to come, between these, W. */
    double powerW(Truth truth, double lineC, double leastW, double mostW, double stepS) {
        double benchC = truth.coldestBenchC();
        double elementC = truth.elementC();
        double risingKPerS = begun ? (benchC - lastC) / stepS : 0;
        double meanElementC = begun ? (elementC + lastElementC) / 2 : elementC;
        begun = true;
        lastC = benchC;
        lastElementC = elementC;
        double moreW = airJPerK * ((lineC - benchC) / EASE_S - risingKPerS);
        double wantedC = Math.max(truth.airC(), meanElementC + moreW / heater.blownWPerK());
        double powerW = heater.blownWPerK() * (elementC - truth.airC())
                + heater.elementJPerK() * (wantedC - elementC) / EASE_S * 2;
        return Math.max(leastW, Math.min(mostW, powerW));
    }
}
