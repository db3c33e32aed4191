package rimeward.sim.sweep;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import rimeward.sim.check.Breach;
import rimeward.sim.run.LawChoice;
import rimeward.sim.run.Laws;
import rimeward.sim.run.Replay;
import rimeward.sim.run.RunResult;
import rimeward.sim.run.Summary;
import rimeward.sim.scenario.BadInput;
import rimeward.sim.scenario.Scenario;
import rimeward.sim.weather.Place;
import rimeward.site.Drying;

/** Makes one winter, finds the worst moments for its troubles, and replays it under our law and its rivals; for any thread. */
final class WinterRun {
    /** Ledgers that are farther from closing mean a fault of the simulator (design/physics). */
    private static final double MOST_CLOSURE = 1e-9;

    /** One winter in so many is run twice, to see whether the second is the same. */
    private static final int TWICE_EVERY = 20;

    /** One in so many is run with a record and an outbox in a file. */
    private static final int RECORDED_EVERY = 20;

    private final WinterMaker maker;
    private final Path scratch;

    WinterRun(WinterMaker maker, Path scratch) {
        this.maker = maker;
        this.scratch = scratch;
    }

    /** A winter with its troubles in place, as it is read from its files. */
    record Set(Scenario scenario, Place place, String weather, List<String> troubles) {}

    /** Our law's run, where it came to an end, and what did not hold in it. */
    record Ours(Optional<RunResult> result, List<Broken> broken) {}

    WinterLine line(long seed) throws BadInput {
        Set winter = set(seed);
        Scenario scenario = winter.scenario;
        Ours ours = ours(scenario);
        List<LawLine> laws = new ArrayList<>();
        ours.result.ifPresent(run -> laws.add(LawLine.of(run, scenario.site().floorC())));
        for (String rival : scenario.against()) {
            laws.add(LawLine.of(
                    Replay.run(scenario, Laws.find(rival)), scenario.site().floorC()));
        }
        List<Broken> broken = new ArrayList<>(ours.broken);
        if (seed % TWICE_EVERY == 0) {
            broken.addAll(unlike(ours, ours(scenario), scenario));
        }
        if (seed % RECORDED_EVERY == 3) {
            broken.addAll(recorded(scenario));
        }
        return new WinterLine(seed, winter.weather, cover(scenario), dryer(scenario), winter.troubles, laws, broken);
    }

    static Ours ours(Scenario scenario) throws BadInput {
        LawChoice law = Laws.find(scenario.law());
        try {
            RunResult result = Replay.run(scenario, law);
            return new Ours(Optional.of(result), broken(result, scenario));
        } catch (RuntimeException e) { // a fault of the program is a result too, and others' winters go on
            return new Ours(
                    Optional.empty(), List.of(new Broken("crash", scenario.startEpochS(), 0, String.valueOf(e))));
        }
    }

    Set set(long seed) throws BadInput {
        WinterMaker.Made made = maker.make(seed);
        Path folder = scratch.resolve("winter-" + seed);
        try {
            Scenario quiet = ScenarioText.asRead(made.scenario(), made.place(), folder);
            List<WorstMoment.At> placed = made.troubles().isEmpty()
                    ? List.of()
                    : new WorstMoment(quiet, Laws.find(quiet.law())).of(made.troubles());
            Scenario whole = WorstMoment.with(made.scenario(), placed);
            Scenario read = placed.isEmpty() ? quiet : ScenarioText.asRead(whole, made.place(), folder);
            List<String> words = new ArrayList<>(placed.stream()
                    .map(at -> String.format(
                            Locale.ROOT, "%s after %.2f d", at.trouble().name(), at.atS() / 86_400.0))
                    .toList());
            if (Troubles.isStorm(seed)) {
                words.add("a storm of " + read.faults().faults().size());
            }
            return new Set(read, made.place(), made.weather(), words);
        } finally {
            remove(folder);
        }
    }

    /** What did not hold under our law. */
    private static List<Broken> broken(RunResult ours, Scenario scenario) {
        List<Broken> broken = new ArrayList<>();
        for (Breach breach : ours.summary().breaches()) {
            broken.add(new Broken(breach.property().code(), breach.firstEpochS(), breach.lastedS(), breach.text()));
        }
        Summary summary = ours.summary();
        if (!(summary.heatClosure() <= MOST_CLOSURE) || !(summary.waterClosure() <= MOST_CLOSURE)) {
            broken.add(new Broken(
                    "ledger",
                    scenario.startEpochS(),
                    scenario.lengthS(),
                    String.format(
                            Locale.ROOT,
                            "heat %.1e, water %.1e of their turnover are missing",
                            summary.heatClosure(),
                            summary.waterClosure())));
        }
        return broken;
    }

    private List<Broken> recorded(Scenario scenario) throws BadInput {
        Path folder = scratch.resolve("record-" + scenario.seed());
        try {
            Files.createDirectories(folder);
            return new RecordedRun(scenario, folder).broken(Laws.find(scenario.law()));
        } catch (IOException e) {
            throw new BadInput("cannot make " + folder + " (" + e + "); is the disk full?", e);
        } finally {
            remove(folder);
        }
    }

    private static List<Broken> unlike(Ours one, Ours again, Scenario scenario) {
        boolean same = one.result.map(RunResult::summary).equals(again.result.map(RunResult::summary))
                && one.result.map(RunResult::switches).equals(again.result.map(RunResult::switches))
                && one.result.map(RunResult::alerts).equals(again.result.map(RunResult::alerts));
        return same
                ? List.of()
                : List.of(new Broken("P9", scenario.startEpochS(), 0, "a second run of the same winter was another"));
    }

    private static String cover(Scenario scenario) {
        return scenario.tunnel()
                .cover()
                .get(0)
                .kind()
                .name()
                .toLowerCase(Locale.ROOT)
                .replace('_', '-');
    }

    private static String dryer(Scenario scenario) {
        return scenario.site().drying() instanceof Drying.Dryer dryer
                ? dryer.kind().name().toLowerCase(Locale.ROOT)
                : "none";
    }

    private static void remove(Path folder) throws BadInput {
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.toList()) {
                Files.delete(file);
            }
            Files.delete(folder);
        } catch (IOException e) {
            throw new BadInput("cannot clean up " + folder + " (" + e + ")", e);
        }
    }
}
