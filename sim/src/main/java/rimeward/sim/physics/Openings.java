package rimeward.sim.physics;

/** Where outside air comes in: gaps, the door, a tear, a fan. For one thread. */
public final class Openings {
    /** Effective leakage area of a square metre of hole, cm²: the discharge of a sharp edge (common practice, no source). */
    private static final double HOLE_CM2_PER_M2 = 6000;

    private static final double S_PER_H = 3600;

    private final TunnelParameters tunnel;
    private final VentFanParameters fan;
    private boolean doorOpen;
    private double tornM2;
    private boolean fanContact;
    private boolean supplied = true;
    private double energyJ;

    Openings(TunnelParameters tunnel, VentFanParameters fan) {
        this.tunnel = tunnel;
        this.fan = fan;
    }

    public void door(boolean open) {
        doorOpen = open;
    }

    public boolean isDoorOpen() {
        return doorOpen;
    }

    /** A hole in the cover, m². */
    public void torn(double areaM2) {
        tornM2 = areaM2;
    }

    /** Closes or opens the relay contact of the vent fan. */
    public void fanContact(boolean closed) {
        fanContact = closed;
    }

    /** Whether mains reach the vent fan. */
    public void supplied(boolean on) {
        supplied = on;
    }

    /** Electric power of the vent fan, W. */
    public double powerW() {
        return fanContact && supplied ? fan.powerW() : 0;
    }

    /** Electric energy the vent fan has used since the start, J. */
    public double energyJ() {
        return energyJ;
    }

    /** Outside air coming in at this lift over outside, m³/s. */
    double m3PerS(double liftK, double windMPerS) {
        double areaCm2 = tunnel.leakCm2() + (doorOpen ? tunnel.doorCm2() : 0) + tornM2 * HOLE_CM2_PER_M2;
        double blown = fanContact && supplied ? fan.airflowM3PerH() / S_PER_H : 0;
        return Leakage.m3PerS(areaCm2, liftK, windMPerS) + blown;
    }

    void book(double stepS) {
        energyJ += powerW() * stepS;
    }
}
