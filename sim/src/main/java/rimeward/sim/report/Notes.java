package rimeward.sim.report;

import java.util.List;
import java.util.Locale;
import rimeward.report.Say;
import rimeward.sim.check.Breach;
import rimeward.sim.run.Comparison;
import rimeward.sim.run.GateVerdict;
import rimeward.sim.run.RunResult;
import rimeward.strip.Markup;
import rimeward.strip.Stamp;

/** The end of the page: gates and rules, how to read it, what is simulated, and the usual cautions. */
final class Notes {
    private static final List<String> READING = List.of(
            "Times are the place's own clock, without summer time. Shaded stretches are nights, darker ones are without mains power; the"
                    + " door standing open is shaded too.",
            "The thick line is the coldest bench in truth; the fine dots are what the controller believed, sensors' uncertainty taken"
                    + " off. Strokes hang where a line is on the wrong side of its limit.",
            "A lane's bar is as high as the power drawn. A thin line without a bar means: asked to run, but drawing nothing – tank full,"
                    + " fuse blown, own thermostat open.",
            "Warm duty: the holder is the one the controller names, by what it sees; “needed” is drawn while, in truth, the coldest bench is"
                    + " so near the floor that somebody must give heat. An upright stroke is a hand-over between machines; a red block"
                    + " through the lane is a gap.");
    private static final List<String> CAUTIONS = List.of(
            "This is a simulation. It shows what a law does in a model of a tunnel, not what yours will do.",
            "Mains electricity in a damp place can kill. Wiring, relays, sockets and residual-current protection are work for a licensed"
                    + " electrician, to the code that holds where you are.",
            "Heaters start fires. The heater keeps its own thermostat and its own over-temperature cut-out, in working order, whatever"
                    + " this program does.",
            "No safety certification is claimed. Keep an independent frost alarm.");

    private Notes() {}

    static void draw(Comparison comparison, String version, Markup to) {
        gates(comparison, to);
        rules(comparison, to);
        if (comparison.least().isPresent()) {
            list("The least possible", LeastWords.of(comparison), to);
        }
        list("How to read it", READING, to);
        simulated(comparison, version, to);
        list("Cautions", CAUTIONS, to);
    }

    private static void gates(Comparison comparison, Markup to) {
        if (comparison.gates().isEmpty()) {
            return;
        }
        to.put("h3", comparison.gatesPassed() ? "Gates: all passed" : "Gates: not all passed")
                .open("ul");
        for (GateVerdict gate : comparison.gates()) {
            to.line()
                    .put(
                            "li",
                            (gate.passed() ? "passed" : "FAILED") + ": " + gate.law() + ", " + gate.gate() + ": "
                                    + Say.number(gate.measured(), 2) + ", limit " + Say.number(gate.limit(), 2));
        }
        to.close();
    }

    private static void rules(Comparison comparison, Markup to) {
        if (comparison.results().stream()
                .allMatch(each -> each.summary().breaches().isEmpty())) {
            return;
        }
        to.put("h3", "Rules that did not hold").open("ul");
        for (RunResult result : comparison.results()) {
            for (Breach breach : result.summary().breaches()) {
                String when = Stamp.day(
                                breach.firstEpochS(), comparison.header().offset()) + " "
                        + Stamp.clock(breach.firstEpochS(), comparison.header().offset());
                to.line()
                        .put(
                                "li",
                                result.law().name() + ", " + breach.property().code() + " "
                                        + breach.property().title() + ", from " + when + ", "
                                        + Say.duration(breach.lastedS()) + " in all: " + breach.text() + ".");
            }
        }
        to.close();
    }

    private static void list(String title, List<String> lines, Markup to) {
        to.put("h3", title).open("ul");
        lines.forEach(line -> to.line().put("li", line));
        to.close();
    }

    private static void simulated(Comparison comparison, String version, Markup to) {
        RunResult first = comparison.results().get(0);
        to.put("h3", "What is simulated");
        to.put(
                "p",
                "Air, mass, film, water and machines of the tunnel, advanced through the weather named above; sensors and relays with"
                        + " their own faults; and the very controller that would run in the tunnel, one tick every "
                        + comparison.header().tickS()
                        + " s. Numbers are of the simulated truth, not of what the sensors said.");
        to.put(
                "p",
                "Everything that came in is accounted for: the heat ledger closes to "
                        + share(first.summary().heatClosure())
                        + " and the water ledger to " + share(first.summary().waterClosure())
                        + " of its turnover. Seed " + comparison.header().seed() + "; Rimeward " + version
                        + ". The same input gives the same page, byte for byte.");
    }

    private static String share(double closure) {
        return String.format(Locale.ROOT, "%.0e", Math.abs(closure));
    }
}
