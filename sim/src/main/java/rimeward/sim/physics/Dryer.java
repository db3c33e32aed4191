package rimeward.sim.physics;

/** The dryer as it stands: its contacts, its own controls and what has gone wrong with it. For one thread. */
public final class Dryer {
    private static final double LOCK_CLOSES_K = 1;
    private static final double FLOAT_FALLS_SHARE = 0.9;
    private static final DryerCase EMPTY =
            new DryerCase(0, 1000, 1, 1, -30, Double.POSITIVE_INFINITY, new HumidistatParameters(0, 1, 0, 1));

    private final DryerCase body;
    private final DryingProcess process;
    private final Hysteresis moist;
    private final Hysteresis warm;
    private final Hysteresis full;
    private boolean contact;
    private boolean supplied = true;
    private boolean tripped;
    private boolean iced;
    private boolean ideal;
    private boolean humidistatOpen;
    private boolean floatUp;
    private boolean wasMoist;
    private boolean isResting;
    private double restUntilS;
    private double energyJ;

    /** What it does in this step: power, conductance to the air, collection per humidity ratio above a residue, ice and melt. */
    double powerW;

    double innerWPerK;
    double takesKgPerS;
    double residueKgPerKg;
    double freezeShare;
    double meltKgPerS;

    Dryer(DryerParameters parameters, State now) {
        if (parameters instanceof DryerParameters.Sorption sorption) {
            body = sorption.body();
            process = new SorptionDrying(this, sorption);
        } else if (parameters instanceof DryerParameters.Compressor compressor) {
            body = compressor.body();
            process = new CompressorDrying(this, compressor);
        } else {
            body = EMPTY;
            process = new NoDrying(this);
        }
        double satisfiedPercent = body.humidistat().satisfiedPercent();
        moist = new Hysteresis(
                satisfiedPercent, satisfiedPercent + body.humidistat().differentialPercent(), now.humidistatPercent);
        warm = new Hysteresis(body.minimumAirC(), body.minimumAirC() + LOCK_CLOSES_K, now.airC);
        full = new Hysteresis(FLOAT_FALLS_SHARE * body.tankKg(), body.tankKg(), now.tankKg);
    }

    /** Closes or opens the contact that asks it to run. Its supply stays, so its fan can run on. */
    public void contact(boolean closed) {
        contact = closed;
    }

    /** Makes it run whenever its contact is closed, without its own controls, ice, rest or run-on: to ask how little would do. */
    void idealise() {
        ideal = true;
    }

    /** Whether mains reach it. */
    public void supplied(boolean on) {
        supplied = on;
    }

    /** A tripped protector stops everything in it. */
    public void tripped(boolean isTripped) {
        tripped = isTripped;
    }

    /** A coil or rotor choked with ice: it draws power and collects nothing. */
    public void iced(boolean isIced) {
        iced = isIced;
    }

    /** A failed humidistat stays open, as if the air were dry. */
    public void humidistatOpen(boolean open) {
        humidistatOpen = open;
    }

    /** Something holds the float up, as if the tank were full. */
    public void floatUp(boolean up) {
        floatUp = up;
    }

    public DryerPhase phase() {
        return process.phase();
    }

    /** Whether its own humidistat has stopped it. */
    public boolean isSatisfied() {
        return humidistatOpen || isResting || !moist.isHigh();
    }

    /** Whether its float has stopped it. */
    public boolean isTankFull() {
        return floatUp || full.isHigh();
    }

    /** Whether its own lock against cold air has stopped it. */
    public boolean isTooCold() {
        return !warm.isHigh();
    }

    /** Electric power, W. */
    public double powerW() {
        return powerW;
    }

    /** Electric energy used since the start, J. */
    public double energyJ() {
        return energyJ;
    }

    DryerCase body() {
        return body;
    }

    boolean isLive() {
        return supplied && !tripped;
    }

    boolean mayRun() {
        return contact && isLive() && !isSatisfied() && !isTankFull() && !isTooCold();
    }

    void emptied() {
        if (full.isHigh()) {
            full.flip();
        }
    }

    void blow(double electricW) {
        lay(electricW, electricW > 0 ? body.blownWPerK() : body.stillWPerK());
    }

    void still(double electricW) {
        lay(electricW, body.stillWPerK());
    }

    private void lay(double electricW, double conductanceWPerK) {
        powerW = electricW;
        innerWPerK = conductanceWPerK;
        takesKgPerS = 0;
        residueKgPerKg = 0;
        freezeShare = 0;
        meltKgPerS = 0;
    }

    void collect(double kgPerS, double residue, double iceShare) {
        takesKgPerS = iced ? 0 : kgPerS;
        residueKgPerKg = residue;
        freezeShare = ideal ? 0 : iceShare;
    }

    void melt(double kgPerS) {
        meltKgPerS = iced ? 0 : kgPerS;
    }

    void settle(double elapsedS) {
        if (ideal) {
            return;
        }
        if (wasMoist && !moist.isHigh()) {
            restUntilS = elapsedS + body.humidistat().restS();
        }
        wasMoist = moist.isHigh();
        isResting = elapsedS < restUntilS;
        process.settle(elapsedS);
    }

    void lay(State now) {
        if (!ideal) {
            process.lay(now);
        } else if (contact) {
            process.run(now);
        } else {
            still(0);
        }
    }

    double untilTimerS(double elapsedS) {
        if (ideal) {
            return Double.POSITIVE_INFINITY;
        }
        double untilRestedS = isResting ? restUntilS - elapsedS : Double.POSITIVE_INFINITY;
        return Math.min(untilRestedS, process.untilTimerS(elapsedS));
    }

    void offer(Crossings crossings, State now, State next) {
        if (ideal) {
            return;
        }
        crossings.offer(moist, now.humidistatPercent, next.humidistatPercent);
        crossings.offer(warm, now.airC, next.airC);
        crossings.offer(full, now.tankKg, next.tankKg);
        process.offer(crossings, now, next);
    }

    void book(double stepS) {
        energyJ += powerW * stepS;
    }
}
