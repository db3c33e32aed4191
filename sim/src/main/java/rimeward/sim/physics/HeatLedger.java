package rimeward.sim.physics;

/**
 * Heat in and out of the tunnel's lumps since the start, J; for one thread. It holds sensible heat: water that changes its state gives
 * or takes its latent heat through a path of its own.
 */
@SuppressWarnings("EnumOrdinal") // sums live in an array, and the enum is its index within this class only
public final class HeatLedger {
    private final double[] sumJ = new double[HeatPath.values().length];
    private final double airJPerK;
    private final double massJPerK;
    private final double elementJPerK;
    private final double dryerJPerK;
    private final State start = new State();
    private final State now;
    private double turnoverJ;

    HeatLedger(TunnelParameters tunnel, double airJPerK, HeaterParameters heater, DryerCase dryer, State now) {
        this.airJPerK = airJPerK;
        massJPerK = tunnel.massJPerK();
        elementJPerK = heater.elementJPerK();
        dryerJPerK = dryer.innerJPerK();
        start.copyFrom(now);
        this.now = now;
    }

    /** Net heat in by one path, J. */
    public double inJ(HeatPath path) {
        return sumJ[path.ordinal()];
    }

    /** Net heat in by all paths, J. */
    public double inJ() {
        double sum = 0;
        for (double pathJ : sumJ) {
            sum += pathJ;
        }
        return sum;
    }

    /** What air, mass, element and dryer hold more than at the start, J. */
    public double storedJ() {
        return airJPerK * (now.airC - start.airC)
                + massJPerK * (now.massC - start.massC)
                + elementJPerK * (now.elementC - start.elementC)
                + dryerJPerK * (now.dryerC - start.dryerC);
    }

    /** All heat that moved, whichever way, J. */
    public double turnoverJ() {
        return turnoverJ;
    }

    /** How far the ledger is from closing, as a share of the turnover. */
    public double closure() {
        return turnoverJ == 0 ? 0 : Math.abs(inJ() - storedJ()) / turnoverJ;
    }

    void book(Flows flows, double stepS) {
        add(HeatPath.HEATER, flows.heaterW * stepS);
        add(HeatPath.DRYER, flows.dryerW * stepS);
        add(HeatPath.SUN, (flows.sunToAirW + flows.sunToMassW) * stepS);
        add(HeatPath.COVER, flows.coverW * stepS);
        add(HeatPath.SKY, flows.skyW * stepS);
        add(HeatPath.LEAKAGE, flows.leakW * stepS);
        add(HeatPath.GROUND, flows.groundW * stepS);
        add(HeatPath.EVAPORATION, -flows.evaporationW * stepS);
        add(HeatPath.CONDENSATION, flows.condensationW * stepS);
        add(HeatPath.FREEZING, flows.freezingW * stepS);
        add(HeatPath.COLLECTION, flows.collectionW * stepS);
        add(HeatPath.DEFROST, -flows.meltW * stepS);
    }

    private void add(HeatPath path, double joules) {
        sumJ[path.ordinal()] += joules;
        turnoverJ += Math.abs(joules);
    }
}
