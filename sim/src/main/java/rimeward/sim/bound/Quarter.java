package rimeward.sim.bound;

/** What came of a quarter of an hour. */
final class Quarter {
    private final double[] end;
    private final double earlyC;
    private final double middleC;
    private final double endC;
    private final double rhPercent;
    private final double otherKWh;

    Quarter(double[] end, double earlyC, double middleC, double endC, double rhPercent, double otherKWh) {
        this.end = end;
        this.earlyC = earlyC;
        this.middleC = middleC;
        this.endC = endC;
        this.rhPercent = rhPercent;
        this.otherKWh = otherKWh;
    }

    /** State at its end, as {@link rimeward.sim.physics.IdealTunnel#state} gives it. */
    double[] end() {
        return end;
    }

    /** Coldest bench at a sixth of it, °C. */
    double earlyC() {
        return earlyC;
    }

    /** Coldest bench half-way, °C. */
    double middleC() {
        return middleC;
    }

    /** Coldest bench at the end, °C. */
    double endC() {
        return endC;
    }

    /** Mean humidity at the coldest bench, %. */
    double rhPercent() {
        return rhPercent;
    }

    /** Electricity of all but the heater, kWh. */
    double otherKWh() {
        return otherKWh;
    }

    /** This and so much of another. */
    Quarter plus(double share, Quarter other) {
        double[] state = new double[other.end.length];
        for (int i = 0; i < state.length; i++) {
            state[i] = end[i] + share * other.end[i];
        }
        return new Quarter(
                state,
                earlyC + share * other.earlyC,
                middleC + share * other.middleC,
                endC + share * other.endC,
                rhPercent + share * other.rhPercent,
                otherKWh + share * other.otherKWh);
    }

    static Quarter zero(int numbers) {
        return new Quarter(new double[numbers], 0, 0, 0, 0, 0);
    }

    /** The coldest that was looked at, °C. */
    double lowestC() {
        return Math.min(earlyC, Math.min(middleC, endC));
    }
}
