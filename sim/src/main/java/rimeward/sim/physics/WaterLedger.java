package rimeward.sim.physics;

/** Water in, out and about the tunnel since the start, kg; for one thread. */
@SuppressWarnings("EnumOrdinal") // sums live in an array, and the enum is its index within this class only
public final class WaterLedger {
    private static final WaterPath[] PATHS = WaterPath.values();

    private final double[] sumKg = new double[PATHS.length];
    private final double dryAirKg;
    private final State now;
    private final double startKg;
    private double turnoverKg;

    WaterLedger(double dryAirKg, State now) {
        this.dryAirKg = dryAirKg;
        this.now = now;
        startKg = heldKg();
    }

    /** Water that went this way, kg. */
    public double movedKg(WaterPath path) {
        return sumKg[path.ordinal()];
    }

    /** Net water in, kg. */
    public double inKg() {
        double sum = 0;
        for (WaterPath path : PATHS) {
            sum += path.isAcrossBoundary() ? sumKg[path.ordinal()] : 0;
        }
        return sum;
    }

    /** What air, film, medium, tank and coil hold more than at the start, kg. */
    public double storedKg() {
        return heldKg() - startKg;
    }

    private double heldKg() {
        return dryAirKg * now.humidityKgPerKg
                + now.filmWaterKg
                + now.filmFrostKg
                + now.mediumWaterKg
                + now.tankKg
                + now.coilIceKg;
    }

    /** All water that moved, whichever way, kg. */
    public double turnoverKg() {
        return turnoverKg;
    }

    /** How far the ledger is from closing, as a share of the turnover. */
    public double closure() {
        return turnoverKg == 0 ? 0 : Math.abs(inKg() - storedKg()) / turnoverKg;
    }

    void book(Flows flows, double stepS) {
        add(WaterPath.LEAKAGE, flows.leakKgPerS * stepS);
        add(WaterPath.EVAPORATION, flows.evaporationKgPerS * stepS);
        add(WaterPath.CONDENSATION, flows.condensationKgPerS * stepS);
        add(WaterPath.COLLECTION, flows.collectionKgPerS * stepS);
    }

    void add(WaterPath path, double kg) {
        sumKg[path.ordinal()] += kg;
        turnoverKg += Math.abs(kg);
    }
}
