package rimeward.sim.report;

import java.time.Instant;
import rimeward.sim.check.Breach;
import rimeward.sim.run.AlertEvent;
import rimeward.sim.run.Comparison;
import rimeward.sim.run.FaultNote;
import rimeward.sim.run.GateVerdict;
import rimeward.sim.run.Least;
import rimeward.sim.run.MachineUse;
import rimeward.sim.run.RunResult;
import rimeward.sim.run.ScenarioHeader;
import rimeward.sim.run.Shortfall;
import rimeward.sim.run.Summary;
import rimeward.site.Site;

/** {@code summary.json}: the comparison in numbers, for other programs. Times are ISO 8601 in UTC; each name ends with its unit. */
public final class SummaryJson {
    private static final double S_PER_MIN = 60;
    private static final double S_PER_H = 3600;

    private final Comparison comparison;
    private final Json json = new Json();

    private SummaryJson(Comparison comparison) {
        this.comparison = comparison;
    }

    public static String of(Comparison comparison) {
        return new SummaryJson(comparison).write();
    }

    private String write() {
        json.object(() -> {
            json.name("scenario").object(() -> header(comparison.header()));
            json.name("site").object(() -> site(comparison.site()));
            json.name("laws")
                    .array(() -> comparison
                            .results()
                            .forEach(result -> json.element().object(() -> law(result))));
            json.name("gates")
                    .array(() ->
                            comparison.gates().forEach(gate -> json.element().object(() -> gate(gate))));
            json.member("gatesPassed", comparison.gatesPassed());
            comparison.least().ifPresent(least -> json.name("least").object(() -> least(least)));
        });
        return json.toString();
    }

    private void header(ScenarioHeader header) {
        json.member("id", header.id())
                .member("title", header.title())
                .member("description", header.description().strip())
                .member("weather", header.weather())
                .member("start", utc(header.startEpochS()))
                .member("end", utc(header.endEpochS()))
                .member("utcOffset", header.offset().getId())
                .member("tickS", header.tickS())
                .member("seed", header.seed());
        json.name("faults")
                .array(() -> header.faults().forEach(fault -> json.element().object(() -> fault(fault))));
    }

    private void fault(FaultNote fault) {
        json.member("from", utc(fault.fromEpochS()))
                .member("to", utc(fault.toEpochS()))
                .member("text", fault.text());
    }

    private void site(Site site) {
        json.member("name", site.name())
                .member("floorC", site.floorC(), 2)
                .member("guardMarginK", site.targets().guardMarginK(), 2)
                .member("rhTargetPercent", site.targets().rhPercent(), 1)
                .member("circuitLimitW", site.circuit().limitW(), 0);
    }

    private void law(RunResult result) {
        json.member("law", result.law().name())
                .member("says", result.law().says())
                .member("guarded", result.law().guarded());
        numbers(result.summary());
        json.name("machines")
                .array(() -> result.summary()
                        .machines()
                        .forEach(use -> json.element().object(() -> machine(use))));
        json.name("alerts")
                .array(() -> result.alerts().forEach(alert -> json.element().object(() -> alert(alert))));
        json.name("broken")
                .array(() -> result.summary()
                        .breaches()
                        .forEach(breach -> json.element().object(() -> broken(breach))));
        json.name("shortfall");
        if (result.summary().shortfall() instanceof Shortfall.Missing missing) {
            json.object(() -> json.member("deepestK", missing.deepestK(), 2)
                    .member("at", utc(missing.epochS()))
                    .member("missingW", missing.missingW(), 0));
        } else {
            json.raw("null");
        }
    }

    private void numbers(Summary summary) {
        json.member("lowestBenchC", summary.lowestBenchC(), 2)
                .member("lowestBench", summary.lowestBench())
                .member("lowestAt", utc(summary.lowestEpochS()))
                .member("belowFloorMin", summary.belowFloorS() / S_PER_MIN, 2)
                .member("gapS", summary.gapS())
                .member("filmAtDewMin", summary.filmAtDewS() / S_PER_MIN, 2)
                .member("benchAtDewMin", summary.benchAtDewS() / S_PER_MIN, 2)
                .member("aboveRhTargetH", summary.aboveRhTargetS() / S_PER_H, 3)
                .member("heaterKWh", summary.heaterKWh(), 3)
                .member("dryerKWh", summary.dryerKWh(), 3)
                .member("fanKWh", summary.fanKWh(), 3)
                .member("totalKWh", summary.totalKWh(), 3)
                .member("cost", summary.cost(), 3)
                .member("currency", summary.currency())
                .member("collectedL", summary.collectedL(), 3)
                .member("alertsRaised", summary.alerts())
                .tiny("heatClosure", summary.heatClosure())
                .tiny("waterClosure", summary.waterClosure());
    }

    private void machine(MachineUse use) {
        json.member("machine", use.machineId())
                .member("starts", use.starts())
                .member("closedH", use.closedS() / S_PER_H, 3)
                .member("longestOffMin", use.longestOffS() / S_PER_MIN, 2)
                .member("energyKWh", use.energyKWh(), 3);
    }

    private void alert(AlertEvent alert) {
        json.member("at", utc(alert.epochS()))
                .member(
                        "kind",
                        alert.kind().name().toLowerCase(java.util.Locale.ROOT).replace('_', '-'))
                .member("subject", alert.subject())
                .member("change", alert.raised() ? "raised" : "cleared")
                .member("text", alert.text());
    }

    private void broken(Breach breach) {
        json.member("property", breach.property().code())
                .member("title", breach.property().title())
                .member("firstAt", utc(breach.firstEpochS()))
                .member("lastedS", breach.lastedS())
                .member("text", breach.text());
    }

    private void gate(GateVerdict gate) {
        json.member("law", gate.law())
                .member("gate", gate.gate())
                .member("measured", gate.measured(), 3)
                .member("limit", gate.limit(), 3)
                .member("passed", gate.passed());
    }

    private void least(Least least) {
        json.member("kWh", least.kWh(), 3)
                .member("cost", least.cost(), 3)
                .member("playedKWh", least.playedKWh(), 3)
                .member("playedCost", least.playedCost(), 3)
                .member("playedShortK", least.playedShortK(), 3)
                .member("dampPercentH", least.dampPercentH(), 2)
                .member("playedDampPercentH", least.playedDampPercentH(), 2)
                .member("lawBelowFloorH", least.belowH(), 2);
        least.held()
                .ifPresent(held -> json.name("floorHeld")
                        .object(() -> json.member("kWh", held.kWh(), 3)
                                .member("belowFloorH", held.belowH(), 2)
                                .member("deepestK", held.deepestK(), 2)));
        json.name("steps")
                .array(() -> least.steps()
                        .forEach(step -> json.element()
                                .object(() -> json.member("says", step.says()).member("kWh", step.kWh(), 3))));
        json.name("ratios")
                .array(() -> comparison
                        .results()
                        .forEach(result -> json.element()
                                .object(() -> json.member("law", result.law().name())
                                        .member("kWh", result.summary().totalKWh() / least.kWh(), 3)
                                        .member("cost", result.summary().cost() / least.cost(), 3))));
    }

    private static String utc(long epochS) {
        return Instant.ofEpochSecond(epochS).toString();
    }
}
