package rimeward.sim.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import rimeward.report.Say;
import rimeward.sim.report.Measure.Better;
import rimeward.sim.run.Comparison;
import rimeward.sim.run.Least;
import rimeward.sim.run.MachineUse;
import rimeward.sim.run.RunResult;
import rimeward.sim.run.Summary;
import rimeward.site.Machine;
import rimeward.site.Venting;

/** The lines of the comparison, in the order in which they matter to a grower. */
final class Measures {
    private final List<Measure> all = new ArrayList<>();

    private Measures() {}

    static List<Measure> of(Comparison comparison) {
        Measures measures = new Measures();
        measures.plants();
        measures.damp(comparison);
        measures.cost(comparison);
        comparison.least().ifPresent(measures::least);
        measures.machines(comparison);
        return List.copyOf(measures.all);
    }

    private void plants() {
        add("lowest bench", "°C", "the coldest any bench became", Better.HIGHER, 1, Summary::lowestBenchC);
        add(
                "below the floor",
                "min",
                "time with any bench below the floor",
                Better.LOWER,
                0,
                s -> minutes(s.belowFloorS()));
        add("gap", "s", "time near the floor with heat in hand and nobody giving it", Better.LOWER, 0, Summary::gapS);
    }

    private void damp(Comparison comparison) {
        String target = Say.number(comparison.site().targets().rhPercent(), 0) + " %";
        add(
                "bench wet",
                "min",
                "time with a bench at or below the dew point",
                Better.LOWER,
                0,
                s -> minutes(s.benchAtDewS()));
        add(
                "film wet",
                "min",
                "time with the film at or below the dew point",
                Better.LOWER,
                0,
                s -> minutes(s.filmAtDewS()));
        add(
                "above " + target,
                "h",
                "time with the wettest bench above the humidity target",
                Better.LOWER,
                1,
                s -> s.aboveRhTargetS() / 3600.0);
    }

    private void cost(Comparison comparison) {
        add("heater", "kWh", "electricity of the heater, its own fan included", Better.NEITHER, 1, Summary::heaterKWh);
        add("dryer", "kWh", "electricity of the dryer", Better.NEITHER, 1, Summary::dryerKWh);
        if (comparison.site().venting() instanceof Venting.VentFan) {
            add("vent fan", "kWh", "electricity of the vent fan", Better.NEITHER, 1, Summary::fanKWh);
        }
        add("all machines", "kWh", "electricity of all machines", Better.LOWER_IF_SAFE, 1, Summary::totalKWh);
        String currency = comparison.results().get(0).summary().currency();
        add("cost", currency, "what that costs by the site's tariff", Better.LOWER_IF_SAFE, 2, Summary::cost);
        add("water", "L", "water the dryer took out of the air", Better.NEITHER, 1, Summary::collectedL);
    }

    private void least(Least least) {
        add(
                "times the least",
                "kWh",
                "its electricity over " + Say.with(least.kWh(), 1, "kWh") + ", the least with perfect foresight",
                Better.LOWER_IF_SAFE,
                2,
                s -> s.totalKWh() / least.kWh());
        add(
                "times the least",
                "cost",
                "its cost over " + Say.number(least.cost(), 2) + ", the least with perfect foresight",
                Better.LOWER_IF_SAFE,
                2,
                s -> s.cost() / least.cost());
    }

    private void machines(Comparison comparison) {
        List<Machine> machines = comparison.site().machines();
        for (int i = 0; i < machines.size(); i++) {
            int machine = i;
            add(
                    "starts, " + machines.get(i).id(),
                    "",
                    "how often its relay closed",
                    Better.NEITHER,
                    0,
                    s -> use(s, machine).starts());
        }
        add("alerts", "", "how often the grower was told something", Better.NEITHER, 0, Summary::alerts);
        add(
                "broken rules",
                "",
                "properties that must always hold and did not",
                Better.LOWER,
                0,
                s -> s.breaches().size());
    }

    private static MachineUse use(Summary summary, int machine) {
        return summary.machines().get(machine);
    }

    private static double minutes(long lengthS) {
        return lengthS / 60.0;
    }

    private void add(
            String label, String unit, String says, Better better, int decimals, ToDoubleFunction<Summary> value) {
        all.add(new Measure(label, unit, says, better, decimals, (RunResult r) -> value.applyAsDouble(r.summary())));
    }
}
