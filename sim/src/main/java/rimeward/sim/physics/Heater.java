package rimeward.sim.physics;

/** The heater as it stands: its contacts, its thermostat and what has gone wrong with it. For one thread. */
public final class Heater {
    private final HeaterParameters parameters;
    private final double[] stageW;
    private final double[] energyJ;
    private final Hysteresis dialOpen;
    private final Hysteresis cutOutOpen;
    private int contacts;
    private boolean supplied = true;
    private boolean fanStalled;
    private boolean modulated;
    private double modulatedW;
    private double powerW;

    Heater(HeaterParameters parameters, State now) {
        this.parameters = parameters;
        stageW = parameters.stagesW().stream().mapToDouble(Double::doubleValue).toArray();
        energyJ = new double[stageW.length];
        double opensC = parameters.dial().opensC();
        dialOpen = new Hysteresis(opensC - parameters.dial().differentialK(), opensC, now.bimetalC);
        cutOutOpen = new Hysteresis(parameters.cutOutResetC(), parameters.cutOutC(), now.elementC);
    }

    public int stages() {
        return stageW.length;
    }

    /** Closes or opens the relay contact of a stage. */
    public void contact(int stage, boolean closed) {
        contacts = closed ? contacts | 1 << stage : contacts & ~(1 << stage);
    }

    /**
     * Makes it an ideal heater from now on, which gives any power as long as mains reach it, without contacts, thermostat or cut-out: to
     * ask how little would do, never to control anything.
     */
    public void modulate(double powerW) {
        modulated = true;
        modulatedW = powerW;
    }

    /** Whether mains reach it: fuse, plug, residual-current device and the grid together. */
    public void supplied(boolean on) {
        supplied = on;
    }

    /** A stalled fan leaves the element to its own convection, and soon to its cut-out. */
    public void fanStalled(boolean stalled) {
        fanStalled = stalled;
    }

    /** Whether its own thermostat has stopped it. */
    public boolean isDialOpen() {
        return dialOpen.isHigh();
    }

    public boolean isCutOutOpen() {
        return cutOutOpen.isHigh();
    }

    /** Electric power of all stages, W. */
    public double powerW() {
        return powerW;
    }

    /** Electric power of one stage, W. */
    public double powerW(int stage) {
        return powerW > 0 && (contacts >> stage & 1) != 0 ? stageW[stage] : 0;
    }

    /** Electric energy one stage has used since the start, J. */
    public double energyJ(int stage) {
        return energyJ[stage];
    }

    void settle() {
        powerW = 0;
        if (modulated) {
            powerW = supplied ? modulatedW : 0;
        } else if (supplied && !dialOpen.isHigh() && !cutOutOpen.isHigh()) {
            for (int stage = 0; stage < stageW.length; stage++) {
                powerW += (contacts >> stage & 1) != 0 ? stageW[stage] : 0;
            }
        }
    }

    double elementWPerK() {
        return powerW > 0 && !fanStalled ? parameters.blownWPerK() : parameters.stillWPerK();
    }

    double dialLagS() {
        return parameters.dial().lagS();
    }

    void offer(Crossings crossings, State now, State next) {
        if (modulated) {
            return;
        }
        crossings.offer(dialOpen, now.bimetalC, next.bimetalC);
        crossings.offer(cutOutOpen, now.elementC, next.elementC);
    }

    void book(double stepS) {
        if (powerW > 0) {
            for (int stage = 0; stage < stageW.length; stage++) {
                energyJ[stage] += powerW(stage) * stepS;
            }
        }
    }
}
