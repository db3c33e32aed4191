package rimeward.sim.bound;

import rimeward.sim.scenario.Scenario;
import rimeward.site.Drying;
import rimeward.site.Site;

/** How much of each input there may be: heater in W, dryer and fan as shares of the quarter. */
final class Box {
    private final double[][] least;
    private final double[][] most;
    private final double circuitW;
    private final double dryerW;

    Box(double[][] least, double[][] most, double circuitW, double dryerW) {
        this.least = least;
        this.most = most;
        this.circuitW = circuitW;
        this.dryerW = dryerW;
    }

    /** By input and quarter. */
    double[][] least() {
        return least;
    }

    /** The same. */
    double[][] most() {
        return most;
    }

    /** What the circuit leaves to the machines. */
    double circuitW() {
        return circuitW;
    }

    /** What the dryer takes of it. */
    double dryerW() {
        return dryerW;
    }

    /** What machines, faults and circuit allow. */
    static Box of(Scenario scenario, Course course) {
        Site site = scenario.site();
        double[][] least = new double[Tangent.INPUTS][course.quarters];
        double[][] most = new double[Tangent.INPUTS][course.quarters];
        double circuitW = site.circuit().limitW();
        double dryerW =
                site.drying() instanceof Drying.Dryer plate ? plate.machine().ratedW() : 0;
        for (int k = 0; k < course.quarters; k++) {
            least[0][k] = course.leastHeatW(k);
            most[0][k] = Math.max(least[0][k], course.mostHeatW(k));
            most[1][k] = course.mayDry(k) ? 1 : 0;
            most[2][k] = course.mayVent(k) ? 1 : 0;
        }
        return new Box(least, most, circuitW, dryerW);
    }

    /** The same with dryer and fan as a schedule has them. */
    Box fixed(Schedule schedule) {
        double[][] from = {least[0], schedule.dryerShare(), schedule.fanShare()};
        double[][] to = {most[0], schedule.dryerShare(), schedule.fanShare()};
        return new Box(from, to, circuitW, dryerW);
    }

    /** The same, but no farther than this from where dryer and fan are. */
    Box near(Schedule schedule, double share) {
        double[][] from = {least[0], lowered(schedule.dryerShare(), share, 1), lowered(schedule.fanShare(), share, 2)};
        double[][] to = {most[0], raised(schedule.dryerShare(), share, 1), raised(schedule.fanShare(), share, 2)};
        return new Box(from, to, circuitW, dryerW);
    }

    private double[] lowered(double[] at, double share, int input) {
        double[] to = new double[at.length];
        for (int k = 0; k < to.length; k++) {
            to[k] = Math.min(most[input][k], Math.max(least[input][k], at[k] - share));
        }
        return to;
    }

    private double[] raised(double[] at, double share, int input) {
        double[] to = new double[at.length];
        for (int k = 0; k < to.length; k++) {
            to[k] = Math.max(least[input][k], Math.min(most[input][k], at[k] + share));
        }
        return to;
    }

    double least(int input, int quarter) {
        return least[input][quarter];
    }

    double most(int input, int quarter) {
        return most[input][quarter];
    }

    /** A schedule brought within. */
    Schedule clipped(Schedule schedule) {
        Schedule within = Schedule.idle(schedule.quarters());
        for (int k = 0; k < schedule.quarters(); k++) {
            within.heaterW()[k] = clip(schedule.heaterW()[k], 0, k);
            within.dryerShare()[k] = clip(schedule.dryerShare()[k], 1, k);
            within.fanShare()[k] = Math.min(1 - within.dryerShare()[k], clip(schedule.fanShare()[k], 2, k));
        }
        return within;
    }

    private double clip(double value, int input, int k) {
        return Math.max(least[input][k], Math.min(most[input][k], value));
    }
}
