package rimeward.sim.bound;

/** How a quarter of an hour answers to a little more of something, by differences of the simulator itself. */
final class Tangent {
    /** Air, mass, element, humidity. */
    static final int STATES = 4;

    /** Heater, dryer, fan. */
    static final int INPUTS = 3;

    /** The four states at the end; then the coldest bench early, half-way and at the end, and the mean humidity. */
    static final int SEEN = STATES + 4;

    static final int EARLY = STATES;
    static final int MIDDLE = STATES + 1;
    static final int END = STATES + 2;
    static final int DAMP = STATES + 3;

    private static final double[] SMALL = {0.1, 0.1, 1, 1e-5}; // K, K, K, kg/kg
    private static final double SMALL_W = 100;

    private final double[][] onState;
    private final double[][] onInput;
    private final double[] otherKWh;

    Tangent(double[][] onState, double[][] onInput, double[] otherKWh) {
        this.onState = onState;
        this.onInput = onInput;
        this.otherKWh = otherKWh;
    }

    /** For each of the {@link #STATES} numbers at the quarter's beginning, what one more of it does to the {@link #SEEN}. */
    double[][] onState() {
        return onState;
    }

    /** The same for each of the {@link #INPUTS}: a watt of heater, the whole of dryer and fan. */
    double[][] onInput() {
        return onInput;
    }

    /** Electricity of dryer and fan if each ran all the quarter, kWh. */
    double[] otherKWh() {
        return otherKWh;
    }

    static Tangent of(
            Probe probe, Course course, int quarter, double[] from, Schedule schedule, Modes modes, Quarter now) {
        double heaterW = schedule.heaterW()[quarter];
        double[][] onState = new double[STATES][];
        for (int i = 0; i < STATES; i++) {
            double[] moved = from.clone();
            moved[i] += SMALL[i];
            onState[i] = slope(now, Path.quarter(probe, quarter, moved, heaterW, schedule), SMALL[i]);
        }
        double byW = heaterW + SMALL_W > course.mostHeatW(quarter) ? -SMALL_W : SMALL_W;
        double[] onHeater = course.mostHeatW(quarter) > course.leastHeatW(quarter)
                ? slope(now, Path.quarter(probe, quarter, from, heaterW + byW, schedule), byW)
                : new double[SEEN];
        double[][] onInput = {onHeater, slope(modes.nothing(), modes.dryer(), 1), slope(modes.nothing(), modes.fan(), 1)
        };
        double[] otherKWh = {0, modes.dryer().otherKWh(), modes.fan().otherKWh()};
        return new Tangent(onState, onInput, otherKWh);
    }

    private static double[] slope(Quarter from, Quarter to, double by) {
        double[] slope = new double[SEEN];
        for (int i = 0; i < STATES; i++) {
            slope[i] = (to.end()[i] - from.end()[i]) / by;
        }
        slope[EARLY] = (to.earlyC() - from.earlyC()) / by;
        slope[MIDDLE] = (to.middleC() - from.middleC()) / by;
        slope[END] = (to.endC() - from.endC()) / by;
        slope[DAMP] = (to.rhPercent() - from.rhPercent()) / by;
        return slope;
    }
}
