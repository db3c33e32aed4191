package rimeward.sim.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import rimeward.sim.report.SweepJson;
import rimeward.sim.report.SweepPage;
import rimeward.sim.report.SweepTable;
import rimeward.sim.scenario.BadInput;
import rimeward.sim.sweep.Broken;
import rimeward.sim.sweep.Plan;
import rimeward.sim.sweep.RecordedWeather;
import rimeward.sim.sweep.ResultsFile;
import rimeward.sim.sweep.Spread;
import rimeward.sim.sweep.Sweep;
import rimeward.sim.sweep.WeatherMaker;
import rimeward.sim.sweep.WinterLine;

/** {@code rimeward-sim sweep}: winters made by chance, by the thousand. */
@Command(
        name = "sweep",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Makes winters by chance (tunnel, machines, sensors, weather, forecasts, faults), replays each under our law and its rivals,",
            "and holds what must always be true against the truth at every tick. A winter here is its five hardest days, not half a year:",
            "see --days. Goes on where it was stopped. Writes results.jsonl, summary.json and summary.html, and prints a table;",
            "a winter that breaks a property is made as small as it still does, and written as a scenario for `replay`."
        },
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:every property held in every winter",
            "1:a property was broken",
            "2:wrong usage, or files that cannot be used"
        })
final class SweepCommand implements Callable<Integer> {
    private static final Pattern SHARD = Pattern.compile("(\\d{1,5})/(\\d{1,5})");

    @Spec
    private CommandSpec spec;

    @Option(names = "--winters", paramLabel = "N", description = "how many (default: ${DEFAULT-VALUE})")
    private int winters = 100;

    @Option(
            names = "--seed",
            paramLabel = "N",
            description = "of the first winter; the others follow (default: ${DEFAULT-VALUE})")
    private long first = 1;

    @Option(names = "--days", paramLabel = "N", description = "how long each is (default: ${DEFAULT-VALUE})")
    private int days = 5;

    @Option(
            names = "--shard",
            paramLabel = "I/N",
            description = "only the I-th of N parts, for several machines; put together with --merge")
    private String shard = "1/1";

    @Option(
            names = "--merge",
            paramLabel = "FILE",
            arity = "1..*",
            description = "run nothing: put the results of these files together")
    private List<Path> merge = List.of();

    @Option(names = "--threads", paramLabel = "N", description = "at once (default: one for each core)")
    private int threads = Runtime.getRuntime().availableProcessors();

    @Option(
            names = "--weather",
            paramLabel = "DIR",
            description = "recorded weather that winters are made from (default: ${DEFAULT-VALUE})")
    private Path weather = Path.of("config", "weather");

    @Option(names = "--out", paramLabel = "DIR", description = "where to write (default: ${DEFAULT-VALUE})")
    private Path out = Path.of("build-report", "sweep");

    @Override
    public Integer call() throws BadInput {
        if (!merge.isEmpty()) {
            ResultsFile.Merged merged = ResultsFile.merged(merge);
            return report(Spread.of(merged.build(), merged.days(), merged.winters()));
        }
        Plan plan = plan();
        try (Sweep sweep = new Sweep(plan, new WeatherMaker(RecordedWeather.of(weather)))) {
            long beganNs = System.nanoTime();
            SweepBar bar = new SweepBar(spec.commandLine().getErr(), () -> (System.nanoTime() - beganNs) / 1e9);
            List<WinterLine> all = sweep.run(file(plan), threads, bar);
            bar.clear();
            int code = report(Spread.of(plan.build(), plan.days(), all));
            tell(String.format(
                    Locale.ROOT, "%d winters run in %.0f s.", bar.ran(), (System.nanoTime() - beganNs) / 1e9));
            for (WinterLine winter : all) {
                if (!winter.broken().isEmpty()) {
                    failed(sweep, plan, winter);
                }
            }
            return code;
        }
    }

    private Plan plan() {
        Matcher part = SHARD.matcher(shard);
        if (!part.matches() || threads < 1) {
            throw new ParameterException(
                    spec.commandLine(),
                    threads < 1
                            ? "--threads is " + threads + "; name 1 or more."
                            : "--shard is " + shard + "; write 2/8.");
        }
        try {
            return new Plan(
                    Build.name(),
                    days,
                    first,
                    winters,
                    Integer.parseInt(part.group(1)),
                    Integer.parseInt(part.group(2)));
        } catch (IllegalArgumentException e) {
            throw new ParameterException(spec.commandLine(), "cannot sweep " + e.getMessage() + ".", e);
        }
    }

    private Path file(Plan plan) {
        return out.resolve(
                plan.shards() == 1 ? "results.jsonl" : "results-" + plan.shard() + "-of-" + plan.shards() + ".jsonl");
    }

    private int report(Spread spread) throws BadInput {
        try {
            Files.createDirectories(out);
            Files.writeString(out.resolve("summary.json"), SweepJson.of(spread));
            Files.writeString(out.resolve("summary.html"), SweepPage.of(spread));
        } catch (IOException e) {
            throw new BadInput("cannot write into " + out + " (" + e + "); choose another place with --out", e);
        }
        PrintWriter to = spec.commandLine().getOut();
        to.print(SweepTable.of(spread));
        tell("Report: " + out.resolve("summary.html"));
        return spread.isGood() ? 0 : 1;
    }

    private void failed(Sweep sweep, Plan plan, WinterLine winter) throws BadInput {
        for (Broken broken : winter.broken()) {
            tell(SweepTable.inWords(winter, broken));
        }
        tell("  program " + plan.build() + ", seed " + winter.seed() + ", " + plan.days() + " days");
        tell("  rimeward-sim replay " + sweep.shrunk(winter, out.resolve("failures")));
    }

    private void tell(String line) {
        spec.commandLine().getOut().println(line);
        spec.commandLine().getOut().flush();
    }
}
