package rimeward.sim.bound;

import rimeward.sim.physics.HeatPath;
import rimeward.sim.physics.IdealTunnel;
import rimeward.sim.physics.Tunnel;
import rimeward.sim.scenario.Scenario;

/** Lets the simulated tunnel run for a quarter of an hour from anywhere; for one thread. */
final class Probe {
    private static final double J_PER_KWH = 3.6e6;

    private final Course course;
    private final IdealTunnel ideal;
    private final Tunnel tunnel;
    private final double[] start;
    private double rotorRiseK;

    Probe(Scenario scenario, Course course) {
        this.course = course;
        ideal = new IdealTunnel(scenario.tunnel(), scenario.machines(), scenario.start());
        tunnel = ideal.tunnel();
        start = ideal.state();
        for (int i = 0; i < 3; i++) { // until the rotor is as warm as it gets
            run(0, start, 0, Mode.DRYER);
            keepRise();
        }
    }

    double[] start() {
        return start.clone();
    }

    /** From now on the dryer begins as warm as it ended its last run. */
    void keepRise() {
        rotorRiseK = tunnel.dryerC() - tunnel.airC();
    }

    Quarter run(int quarter, double[] from, double heaterW, Mode mode) {
        course.show(quarter, 0, tunnel.outside(), tunnel.openings());
        ideal.put(from, mode == Mode.DRYER, mode == Mode.DRYER ? rotorRiseK : 0);
        tunnel.openings().fanContact(mode == Mode.VENT_FAN);
        double usedJ = otherJ();
        double earlyC = 0;
        double middleC = 0;
        double rhSum = 0;
        for (int step = 0; step < Course.STEPS; step++) {
            course.show(quarter, step, tunnel.outside(), tunnel.openings());
            ideal.heat(course.heaterW(quarter, step, heaterW));
            tunnel.advance(Course.STEP_S);
            int coldest = coldest();
            earlyC = step == Course.STEPS / 6 - 1 ? tunnel.benchC(coldest) : earlyC;
            middleC = step == Course.STEPS / 2 - 1 ? tunnel.benchC(coldest) : middleC;
            rhSum += tunnel.benchRhPercent(coldest);
        }
        return new Quarter(
                ideal.state(),
                earlyC,
                middleC,
                tunnel.coldestBenchC(),
                rhSum / Course.STEPS,
                (otherJ() - usedJ) / J_PER_KWH);
    }

    private int coldest() {
        int coldest = 0;
        for (int i = 1; i < tunnel.benches().size(); i++) {
            coldest = tunnel.benchC(i) < tunnel.benchC(coldest) ? i : coldest;
        }
        return coldest;
    }

    private double otherJ() {
        return tunnel.heat().inJ(HeatPath.DRYER) + tunnel.openings().energyJ();
    }
}
