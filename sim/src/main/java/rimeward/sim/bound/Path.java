package rimeward.sim.bound;

import java.util.function.Function;
import rimeward.sim.physics.IdealTunnel;

/**
 * A schedule as the simulator answers it, quarter by quarter. A share of a quarter for a machine is taken as that share of what the whole
 * quarter would do: partial outer convexification, Sager, Reinelt &amp; Bock, Mathematical Programming 118 (2009).
 */
final class Path {
    private final Schedule schedule;
    private final Quarter[] quarters;
    private final Tangent[] tangents;

    Path(Schedule schedule, Quarter[] quarters, Tangent[] tangents) {
        this.schedule = schedule;
        this.quarters = quarters;
        this.tangents = tangents;
    }

    Schedule schedule() {
        return schedule;
    }

    Quarter[] quarters() {
        return quarters;
    }

    Tangent[] tangents() {
        return tangents;
    }

    /** Without the answers to small changes. */
    static Path of(Probe probe, Schedule schedule) {
        Quarter[] quarters = new Quarter[schedule.quarters()];
        double[] from = probe.start();
        for (int k = 0; k < quarters.length; k++) {
            quarters[k] = quarter(probe, k, from, schedule.heaterW()[k], schedule);
            from = quarters[k].end();
        }
        return new Path(schedule, quarters, new Tangent[0]);
    }

    /** With them: that takes ten times as long. */
    static Path withTangents(Probe probe, Course course, Schedule schedule) {
        Quarter[] quarters = new Quarter[schedule.quarters()];
        Tangent[] tangents = new Tangent[quarters.length];
        double[] from = probe.start();
        for (int k = 0; k < quarters.length; k++) {
            double[] here = from;
            int now = k;
            Modes modes = Modes.of(mode -> probe.run(now, here, schedule.heaterW()[now], mode), probe::keepRise);
            quarters[k] = mixed(modes::of, schedule, k);
            tangents[k] = Tangent.of(probe, course, k, from, schedule, modes, quarters[k]);
            from = quarters[k].end();
        }
        return new Path(schedule, quarters, tangents);
    }

    /** One quarter from anywhere, dryer and fan as scheduled. */
    static Quarter quarter(Probe probe, int quarter, double[] from, double heaterW, Schedule schedule) {
        return mixed(mode -> probe.run(quarter, from, heaterW, mode), schedule, quarter);
    }

    private static Quarter mixed(Function<Mode, Quarter> run, Schedule schedule, int quarter) {
        Quarter sum = Quarter.zero(IdealTunnel.NUMBERS);
        for (Mode mode : Mode.values()) {
            double share = schedule.share(mode, quarter);
            if (share > 0) {
                sum = sum.plus(share, run.apply(mode));
            }
        }
        return sum;
    }

    /** Electricity of the whole, kWh. */
    double kWh() {
        double sum = 0;
        for (int k = 0; k < quarters.length; k++) {
            sum += kWh(k);
        }
        return sum;
    }

    double kWh(int quarter) {
        return schedule.heaterW()[quarter] * Course.QUARTER_H / 1000 + quarters[quarter].otherKWh();
    }

    double cost(Course course) {
        double sum = 0;
        for (int k = 0; k < quarters.length; k++) {
            sum += kWh(k) * course.pricePerKWh(k);
        }
        return sum;
    }

    double[] rhPercent() {
        double[] means = new double[quarters.length];
        for (int k = 0; k < means.length; k++) {
            means[k] = quarters[k].rhPercent();
        }
        return means;
    }
}
