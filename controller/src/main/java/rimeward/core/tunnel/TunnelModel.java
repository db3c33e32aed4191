package rimeward.core.tunnel;

import java.util.OptionalDouble;
import rimeward.core.judgement.Inside;
import rimeward.site.Site;
import rimeward.site.Tunnel;

/** A tunnel of two nodes, air and mass, as far as control needs it. Immutable; what follows from its numbers is worked out once. */
public final class TunnelModel {
    private static final double HALF_DAY_S = 43_200;
    private static final double STEP_S = 60;
    private static final double HOUR_S = 3600;
    private static final double TWELFTH = 1 / 12.0;

    private final double heatLossWPerK;
    private final double massCouplingWPerK;
    private final double quickLiftKPerW;
    private final double airTimeConstantS;
    private final double airAnswersPerS;
    private final double driftTimeConstantS;
    private final double changeGoesOnS;
    private final Remains afterHour;

    /**
     * A tunnel.
     *
     * @param heatLossWPerK heat lost to outside per kelvin of lift, W/K
     * @param airCapacityJPerK heat capacity that moves with the air, J/K
     * @param massCapacityJPerK heat capacity of pots, slab and soil, J/K
     * @param massCouplingWPerK exchange between air and mass, W/K
     * @param deadTimeS from switching heat until the sensors see it, s
     */
    public TunnelModel(
            double heatLossWPerK,
            double airCapacityJPerK,
            double massCapacityJPerK,
            double massCouplingWPerK,
            double deadTimeS) {
        this.heatLossWPerK = heatLossWPerK;
        this.massCouplingWPerK = massCouplingWPerK;
        quickLiftKPerW = 1 / (heatLossWPerK + massCouplingWPerK);
        airTimeConstantS = airCapacityJPerK * quickLiftKPerW;
        airAnswersPerS = 1 / airTimeConstantS;
        driftTimeConstantS = (airCapacityJPerK + massCapacityJPerK) / heatLossWPerK;
        changeGoesOnS = effectiveS(deadTimeS + Inside.Bench.SLOPE_AGE_S);
        afterHour = remains(HOUR_S);
    }

    /** What the settings say, until the tunnel has been learned. */
    public static TunnelModel assumed(Site site) {
        Tunnel tunnel = site.tunnel();
        return new TunnelModel(
                tunnel.heatLossWPerK(),
                tunnel.airCapacityJPerK(),
                tunnel.massCapacityJPerK(),
                tunnel.massCouplingWPerK(),
                site.heater().deadTimeS());
    }

    /** Steady heat that holds the air this warm, W; negative when none is needed. */
    public double heatToHoldW(double airC, double outsideC) {
        return heatLossWPerK * (airC - outsideC);
    }

    /** Coldest outside temperature at which this much steady heat still holds the air this warm, °C. */
    public double capabilityC(double holdC, double heatW) {
        return holdC - heatW / heatLossWPerK;
    }

    /** How far heat lifts the air within minutes, before the mass follows, K/W. */
    public double quickLiftKPerW() {
        return quickLiftKPerW;
    }

    /** How quickly the air answers to heat while the mass stands still, s. */
    public double airTimeConstantS() {
        return airTimeConstantS;
    }

    /** The same as parts of the way per second, 1/s. */
    public double airAnswersPerS() {
        return airAnswersPerS;
    }

    /** For how long, at the rate that the sensors show now, the air still changes until heat switched now is felt, s. */
    public double changeGoesOnS() {
        return changeGoesOnS;
    }

    /**
     * A change at this rate slows down as the air nears what the mass holds: over the dead time it goes on for only
     * τ·(1 − e^(−dead/τ)) seconds' worth. Padé form of 1 − e^−x: within 1 % up to x = 2; beyond, the whole is counted.
     */
    private double effectiveS(double deadS) {
        double x = deadS * airAnswersPerS;
        return x < 2 ? deadS / (1 + x * (0.5 + x * TWELFTH)) : airTimeConstantS;
    }

    /**
     * Free-float: the air after every machine has been off for a while, °C. The air drops at once to what the mass (taken
     * to be as warm as the air was) can hold against outside, then both drift together.
     */
    public double freeFloatC(double airC, double outsideC, double horizonS) {
        return freeFloatC(airC, outsideC, remains(horizonS));
    }

    /** The same for one hour, which every tick asks for: the slow functions are worked out once. */
    public double freeFloatAfterHourC(double airC, double outsideC) {
        return freeFloatC(airC, outsideC, afterHour);
    }

    private double freeFloatC(double airC, double outsideC, Remains remains) {
        double heldC = outsideC + massCouplingWPerK * quickLiftKPerW * (airC - outsideC);
        return outsideC + (heldC - outsideC) * remains.drift() + (airC - heldC) * remains.quick();
    }

    /** What is left after a while of the air's own warmth, and of what the mass holds. */
    private record Remains(double quick, double drift) {}

    private Remains remains(double horizonS) {
        double share = massCouplingWPerK * quickLiftKPerW;
        return new Remains(
                StrictMath.exp(-horizonS / airTimeConstantS), StrictMath.exp(-horizonS * share / driftTimeConstantS));
    }

    /** How long free-float stays above a temperature, s; empty when it does so for half a day. */
    public OptionalDouble floatsAboveS(double airC, double limitC, double outsideC) {
        for (double horizonS = 0; horizonS <= HALF_DAY_S; horizonS += STEP_S) {
            if (freeFloatC(airC, outsideC, horizonS) <= limitC) {
                return OptionalDouble.of(horizonS);
            }
        }
        return OptionalDouble.empty();
    }
}
