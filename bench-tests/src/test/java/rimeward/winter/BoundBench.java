package rimeward.winter;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import rimeward.core.decision.DutyLaw;
import rimeward.sim.bound.Bound;
import rimeward.sim.run.LawChoice;
import rimeward.sim.run.LawLabel;
import rimeward.sim.run.Least;
import rimeward.sim.run.Replay;
import rimeward.sim.run.RunResult;
import rimeward.sim.scenario.BadInput;
import rimeward.sim.scenario.Scenario;
import rimeward.sim.sweep.Quantiles;

/**
 * How much more than the least our law takes in tunnels and winters that nobody has seen, without faults, and what for. Prints a line a
 * winter and asserts nothing. Arguments: first seed, how many, days each.
 */
final class BoundBench {
    private BoundBench() {}

    public static void main(String[] args) throws BadInput {
        long first = Long.parseLong(args[0]);
        int count = Integer.parseInt(args[1]);
        int days = Integer.parseInt(args[2]);
        System.out.println("seed  least kWh  + guard margin  + uncertainty  + half differential  ours  its dryer"
                + "  lowest bench over the floor K  ratio  below floor min");
        List<Double> ratios = new ArrayList<>();
        List<Double> reachable = new ArrayList<>();
        long belowS = 0;
        for (long seed = first; seed < first + count; seed++) {
            Scenario scenario = new RandomWinter(seed, days).soundByTheMinute();
            RunResult ours = Replay.run(scenario, new LawChoice(new LawLabel("duty", "ours", true), new DutyLaw()));
            List<Least.Step> steps = Bound.steps(scenario, ours);
            double totalKWh = ours.summary().totalKWh();
            ratios.add(totalKWh / steps.get(0).kWh());
            reachable.add(totalKWh / steps.get(2).kWh());
            belowS += ours.summary().belowFloorS();
            System.out.println(seed + text(steps, ours, scenario.site().floorC()));
        }
        System.out.printf(
                Locale.ROOT,
                "median of %d: %.3f times the least, %.3f times the least at floor + margin + uncertainty; %.1f min below the floor in all%n",
                count,
                median(ratios),
                median(reachable),
                belowS / 60.0);
    }

    private static String text(List<Least.Step> steps, RunResult ours, double floorC) {
        return String.format(
                Locale.ROOT,
                "  %9.2f %15.2f %14.2f %19.2f %6.2f %9.2f %29.2f %6.3f %16.1f",
                steps.get(0).kWh(),
                steps.get(1).kWh(),
                steps.get(2).kWh(),
                steps.get(3).kWh(),
                ours.summary().totalKWh(),
                ours.summary().dryerKWh(),
                ours.summary().lowestBenchC() - floorC,
                ours.summary().totalKWh() / steps.get(0).kWh(),
                ours.summary().belowFloorS() / 60.0);
    }

    private static double median(List<Double> values) {
        return Quantiles.of(values.stream().mapToDouble(Double::doubleValue).toArray())
                .median();
    }
}
