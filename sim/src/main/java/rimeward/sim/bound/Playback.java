package rimeward.sim.bound;

import rimeward.sim.physics.HeatPath;
import rimeward.sim.scenario.Scenario;
import rimeward.sim.world.Truth;
import rimeward.sim.world.World;
import rimeward.sim.world.WorldPlan;

/**
 * A path played into the simulated world itself, with its faults and the real dryer, which warms up, runs on, fills its tank and has its
 * own humidistat. Dryer and fan run as scheduled; the heater, an ideal one, keeps the coldest bench where the path has it.
 *
 * @param kWh electricity it took
 * @param cost by the tariff
 * @param shortK deepest below what was to be kept, K
 * @param dampPercentH how damp it was, as {@link Kept} counts it
 */
record Playback(double kWh, double cost, double shortK, double dampPercentH) {
    private static final double J_PER_KWH = 3.6e6;

    static Playback of(Scenario scenario, Course course, Path path, Kept kept, WorldPlan plan) {
        Player player = new Player(scenario, course, path, kept, new World(plan));
        for (int k = 0; k < course.quarters; k++) {
            player.quarter(k);
        }
        return new Playback(
                player.usedJ() / J_PER_KWH, player.cost, player.shortK, kept.dampPercentH(player.rhPercent));
    }

    /** For one thread. */
    private static final class Player {
        private final Course course;
        private final Path path;
        private final Kept kept;
        private final World world;
        private final Truth truth;
        private final Rider rider;
        private final int dryer;
        private final int fan;
        private final double[] rhPercent;
        private double cost;
        private double shortK;

        Player(Scenario scenario, Course course, Path path, Kept kept, World world) {
            this.course = course;
            this.path = path;
            this.kept = kept;
            this.world = world;
            truth = world.truth();
            rider = new Rider(scenario.tunnel(), scenario.machines().heater());
            int stages = scenario.site().heater().stages().size();
            dryer = scenario.site().dryerRelay().isEmpty() ? -1 : stages;
            fan = scenario.site().ventRelay().isEmpty()
                    ? -1
                    : scenario.site().machines().size() - 1;
            rhPercent = new double[course.quarters];
        }

        void quarter(int k) {
            double beforeJ = usedJ();
            contact(dryer, path.schedule().dryerShare()[k] > 0);
            contact(fan, path.schedule().fanShare()[k] > 0);
            for (int step = 0; step < Course.STEPS; step++) {
                double leastW = course.leastNowW(k, step);
                double mostW = course.mostNowW(k, step);
                world.heat(rider.powerW(truth, lineC(k, step + 1), leastW, mostW, Course.STEP_S));
                world.advanceTo(world.elapsedS() + Course.STEP_S);
                boolean last = step == Course.STEPS - 1;
                shortK = Math.max(shortK, (last ? kept.needEndC(k) : kept.needC(k)) - truth.coldestBenchC());
                rhPercent[k] += coldestRhPercent() / Course.STEPS;
            }
            cost += (usedJ() - beforeJ) / J_PER_KWH * course.pricePerKWh(k);
        }

        private void contact(int machine, boolean closed) {
            if (machine >= 0) {
                world.contact(machine, closed);
            }
        }

        /** Where the path is, while its heater runs; else only what must be kept. */
        private double lineC(int k, int step) {
            if (path.schedule().heaterW()[k] <= 0) {
                return kept.needC(k);
            }
            Quarter now = path.quarters()[k];
            double early = Course.STEPS / 6.0;
            double half = Course.STEPS / 2.0;
            double beforeC = k == 0 ? now.earlyC() : path.quarters()[k - 1].endC();
            double onC = step <= early
                    ? between(beforeC, now.earlyC(), step / early)
                    : step <= half
                            ? between(now.earlyC(), now.middleC(), (step - early) / (half - early))
                            : between(now.middleC(), now.endC(), (step - half) / (Course.STEPS - half));
            return Math.max(onC, kept.needC(k));
        }

        private static double between(double from, double to, double share) {
            return from + share * (to - from);
        }

        private double coldestRhPercent() {
            int coldest = 0;
            for (int i = 1; i < truth.benches(); i++) {
                coldest = truth.benchC(i) < truth.benchC(coldest) ? i : coldest;
            }
            return truth.benchRhPercent(coldest);
        }

        double usedJ() {
            double sumJ = truth.heat().inJ(HeatPath.HEATER) + truth.heat().inJ(HeatPath.DRYER);
            return fan < 0 ? sumJ : sumJ + truth.energyJ(fan);
        }
    }
}
