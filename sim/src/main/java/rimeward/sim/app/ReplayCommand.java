package rimeward.sim.app;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rimeward.sim.bound.Bound;
import rimeward.sim.run.Comparison;
import rimeward.sim.run.LawChoice;
import rimeward.sim.run.Laws;
import rimeward.sim.run.Replay;
import rimeward.sim.run.RunResult;
import rimeward.sim.scenario.BadInput;
import rimeward.sim.scenario.Gates;
import rimeward.sim.scenario.Overrides;
import rimeward.sim.scenario.Scenario;
import rimeward.sim.scenario.ScenarioFile;

/** {@code rimeward-sim replay}: scenarios under one law and its rivals. */
@Command(
        name = "replay",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Replays scenarios in a simulated tunnel, under a law and its rivals, and compares them.",
            "Writes summary.json, trace.csv, switches.csv, report.html and picture.svg, and prints a table."
        },
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:all gates passed, all properties held",
            "1:a gate was missed, or a property was broken under the guard",
            "2:wrong usage, bad settings, or a file that cannot be used"
        })
final class ReplayCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Parameters(
            arity = "1..*",
            paramLabel = "SCENARIO",
            description = "scenario files, as config/scenarios/cold-snap.toml")
    private List<Path> files = List.of();

    @Option(
            names = "--law",
            paramLabel = "LAW",
            description = {
                "the law to judge, instead of the scenario's:",
                "duty (ours), thermostat, dryer-alone, by-hand, always-on, heater-warms or dryer-warms (ours, but for one choice),",
                "a JAR, or JAR:class"
            })
    private @Nullable String law;

    @Option(
            names = "--against",
            paramLabel = "LAW",
            split = ",",
            description = "rivals instead of the scenario's, separated by commas; none for no rival")
    private @Nullable List<String> against;

    @Option(
            names = "--weather",
            paramLabel = "FILE",
            description = "other recorded weather; used whole unless --from or --to is given")
    private @Nullable Path weather;

    @Option(
            names = "--from",
            paramLabel = "TIME",
            converter = PlaceTime.class,
            description = "start by the scenario's clock, as 2014-01-26T12:00")
    private @Nullable LocalDateTime from;

    @Option(
            names = "--to",
            paramLabel = "TIME",
            converter = PlaceTime.class,
            description = "end by the scenario's clock")
    private @Nullable LocalDateTime until;

    @Option(names = "--seed", paramLabel = "N", description = "the luck of sensors, forecasts and made weather")
    private @Nullable Long seed;

    @Option(
            names = "--report",
            paramLabel = "DIR",
            description =
                    "where to write, instead of build-report/<scenario>; with several scenarios a folder each below it")
    private @Nullable Path report;

    @Option(
            names = "--gates",
            paramLabel = "FILE",
            description = "what the law must reach, instead of the scenario's gates")
    private @Nullable Path gates;

    @Option(
            names = "--bound",
            description = {
                "also the least electricity and money with perfect foresight, for the same floor and dryness,",
                "and each law's ratio to it; takes about a minute for two days"
            })
    private boolean bound;

    @Override
    public Integer call() throws BadInput {
        // Read everything before running anything: bad input should not show after minutes of work.
        List<Scenario> scenarios = new ArrayList<>();
        for (Path file : files) {
            scenarios.add(ScenarioFile.read(file, new Overrides(weather, from, until, seed)));
        }
        List<List<LawChoice>> laws = new ArrayList<>();
        for (Scenario scenario : scenarios) {
            laws.add(laws(scenario));
        }
        Gates asked = gates == null ? null : Gates.of(gates);
        boolean good = true;
        for (int i = 0; i < scenarios.size(); i++) {
            Scenario scenario = scenarios.get(i);
            good &= replay(scenario, laws.get(i), asked == null ? scenario.gates() : asked);
        }
        return good ? 0 : 1;
    }

    /** The law to judge, then its rivals; none twice. */
    private List<LawChoice> laws(Scenario scenario) throws BadInput {
        List<String> names = new ArrayList<>();
        names.add(law == null ? scenario.law() : law);
        List<String> rivals = against == null ? scenario.against() : against;
        rivals.stream()
                .filter(name -> !name.equals("none") && !names.contains(name))
                .forEach(names::add);
        List<LawChoice> choices = new ArrayList<>();
        for (String name : names) {
            choices.add(Laws.find(name));
        }
        return choices;
    }

    private boolean replay(Scenario scenario, List<LawChoice> laws, Gates asked) throws BadInput {
        PrintWriter out = spec.commandLine().getOut();
        Progress progress = new Progress(spec.commandLine().getErr());
        long began = System.nanoTime();
        List<RunResult> results = new ArrayList<>();
        for (LawChoice choice : laws) {
            progress.show(scenario.id(), choice.label().name(), results.size() + 1, laws.size());
            results.add(Replay.run(scenario, choice));
        }
        double tookS = (System.nanoTime() - began) / 1e9;
        Comparison comparison = Replay.comparison(scenario, results, asked);
        if (bound) {
            progress.show(scenario.id(), "the least possible", laws.size(), laws.size());
            comparison = comparison.with(Bound.of(scenario, results.get(0)));
        }
        progress.clear();
        Path folder = ResultFiles.write(comparison, folder(scenario));
        Sheet sheet = new Sheet(comparison, Ansi.AUTO.enabled());
        out.print(sheet.text());
        out.print(Sheet.speed(scenario, laws.size(), tookS));
        out.println("Report: " + folder.resolve(ResultFiles.PAGE));
        out.flush();
        return sheet.isGood();
    }

    private Path folder(Scenario scenario) {
        if (report == null) {
            return Path.of("build-report", scenario.id());
        }
        return files.size() == 1 ? report : report.resolve(scenario.id());
    }
}
