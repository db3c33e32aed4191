package rimeward.sim.bound;

/** What runs in each quarter of an hour. */
final class Schedule {
    private static final double HALF = 0.5;

    private final double[] heaterW;
    private final double[] dryerShare;
    private final double[] fanShare;

    Schedule(double[] heaterW, double[] dryerShare, double[] fanShare) {
        this.heaterW = heaterW;
        this.dryerShare = dryerShare;
        this.fanShare = fanShare;
    }

    /** Mean power of the heater, W. */
    double[] heaterW() {
        return heaterW;
    }

    /** Share of the quarter in which the dryer runs, 0…1. */
    double[] dryerShare() {
        return dryerShare;
    }

    /** The same of the vent fan; together at most 1. */
    double[] fanShare() {
        return fanShare;
    }

    static Schedule idle(int quarters) {
        return new Schedule(new double[quarters], new double[quarters], new double[quarters]);
    }

    int quarters() {
        return heaterW.length;
    }

    /** By the number of the input, as {@link Tangent#INPUTS} counts them. */
    double[] input(int input) {
        return switch (input) {
            case 0 -> heaterW;
            case 1 -> dryerShare;
            default -> fanShare;
        };
    }

    double share(Mode mode, int quarter) {
        return switch (mode) {
            case NOTHING -> Math.max(0, 1 - dryerShare[quarter] - fanShare[quarter]);
            case DRYER -> dryerShare[quarter];
            case VENT_FAN -> fanShare[quarter];
        };
    }

    /**
     * Dryer and fan wholly on or off in each quarter, at any moment with as much running time behind them as before, to about half a
     * quarter: sum-up rounding, Sager, Reinelt &amp; Bock (2009).
     */
    Schedule rounded() {
        double[] dryer = new double[quarters()];
        double[] fan = new double[quarters()];
        double dryerDue = 0;
        double fanDue = 0;
        for (int k = 0; k < quarters(); k++) {
            dryerDue += dryerShare[k];
            fanDue += fanShare[k];
            if (dryerShare[k] > 0 && dryerDue >= HALF && dryerDue >= fanDue) {
                dryer[k] = 1;
            } else if (fanShare[k] > 0 && fanDue >= HALF) {
                fan[k] = 1;
            }
            dryerDue -= dryer[k];
            fanDue -= fan[k];
        }
        return new Schedule(heaterW, dryer, fan);
    }
}
