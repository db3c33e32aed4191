package rimeward.app;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.ExitCode;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rimeward.adapter.config.SiteSettings;
import rimeward.adapter.journal.RecordPast;
import rimeward.assembly.Service;
import rimeward.core.outlook.Alternatives;
import rimeward.core.outlook.Course;
import rimeward.core.outlook.CourseMaker;
import rimeward.core.outlook.Forecast;
import rimeward.core.outlook.ForecastErrors;
import rimeward.core.outlook.NightPlan;
import rimeward.core.outlook.Outlook;
import rimeward.core.outlook.OutsideAir;
import rimeward.core.outlook.PlanChoices;
import rimeward.core.outlook.PlanStart;
import rimeward.core.outlook.PlanText;
import rimeward.core.tunnel.TunnelEstimate;
import rimeward.homie.PlanJson;
import rimeward.planning.Evening;
import rimeward.planning.Learned;
import rimeward.planning.PlainCourse;
import rimeward.planning.PlanEnd;
import rimeward.planning.Remembered;
import rimeward.port.Past;
import rimeward.site.RelaySet;
import rimeward.site.Site;

/** {@code rimeward tonight}: what the coming night brings, who carries it, what it costs, and what to do before dark. */
@Command(
        name = "tonight",
        mixinStandardHelpOptions = true,
        description =
                "Plans the coming night: will the floor hold, who holds it, what it costs, what to do before dark.",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:the floor can be held",
            "1:it cannot, by more than the chance of --chance",
            "2:settings, record or forecast cannot be used"
        })
final class TonightCommand implements Callable<Integer> {
    private static final int MAY_NOT_HOLD = 1;

    /** Unheated, a closed tunnel is so much warmer than outside at dusk, K. Common practice, no source. */
    private static final double DUSK_LIFT_K = 3;

    @Spec
    private CommandSpec spec;

    @Parameters(
            index = "0",
            paramLabel = "FILE",
            arity = "0..1",
            description = "settings of this tunnel (default: ${DEFAULT-VALUE})")
    private Path file = Path.of("config", "tunnel.toml");

    @Option(
            names = "--data",
            paramLabel = "DIR",
            description = "where the record is, for the tunnel as it is now (default: ${DEFAULT-VALUE})")
    private Path data = Path.of("/var/lib/rimeward");

    @Option(
            names = "--forecast",
            paramLabel = "CSV",
            description = "lines of time,air °C,dew-point °C; the last may be left out. 2026-01-10T18:00Z,-2.5,-3.1")
    private @Nullable Path forecast;

    @Option(names = "--inside-C", paramLabel = "C", description = "air in the middle of the tunnel now, °C")
    private @Nullable Double insideC;

    @Option(names = "--mass-C", paramLabel = "C", description = "pots and soil now, °C")
    private @Nullable Double massC;

    @Option(names = "--rh", paramLabel = "PERCENT", description = "relative humidity inside now, %%")
    private @Nullable Double rhPercent;

    @Option(names = "--outside-C", paramLabel = "C", description = "outside air now, °C")
    private @Nullable Double outsideC;

    @Option(names = "--tank-L", paramLabel = "L", description = "room left in the dryer's tank, L")
    private @Nullable Double tankL;

    @Option(
            names = "--corner-K",
            paramLabel = "K",
            description = "how much colder the coldest bench is than the middle, K")
    private @Nullable Double cornerK;

    @Option(
            names = "--chance",
            paramLabel = "PERCENT",
            description = "warn from this chance of cold on, %% (default: ${DEFAULT-VALUE})")
    private double chancePercent = 100 * PlanChoices.USUAL_CHANCE;

    @Option(names = "--at", paramLabel = "TIME", description = "plan as of then, as 2026-01-10T16:00Z (default: now)")
    private @Nullable String at;

    @Option(names = "--json", description = "as JSON, in °C")
    private boolean json;

    private final List<String> assumed = new ArrayList<>();

    @Override
    public Integer call() {
        Site settings = SiteSettings.read(file);
        try {
            return plan(settings);
        } catch (IllegalArgumentException e) {
            spec.commandLine().getErr().println(e.getMessage());
            return ExitCode.USAGE;
        }
    }

    private int plan(Site settings) {
        long nowS = now();
        Path record = data.resolve(Service.RECORD);
        Optional<RecordedEvening> recorded = RecordedEvening.of(record, settings, nowS);
        Optional<Evening> seen = recorded.map(RecordedEvening::evening);
        Site site = seen.map(Evening::site).orElse(settings);
        Past past = Files.isRegularFile(record) ? new RecordPast(record) : Past.none();
        Learned learned = Learned.from(past, site, nowS);
        Course course = course(site, recorded, learned, past, nowS).until(PlanEnd.epochS(site, learned.sun(), nowS));
        PlanStart start = start(site, seen, course, nowS);
        PlanChoices choices = choices(site, seen);
        TunnelEstimate estimate = learned.estimate();
        NightPlan plan = NightPlan.of(site, estimate, course, start, choices).assuming(assumed);
        Alternatives others = Alternatives.planned(site, estimate, course, start, choices);
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            out.println(PlanJson.of(plan, others, site));
        } else {
            out.print(PlanText.sheet(plan, site));
            out.println("\nThe same night kept otherwise:");
            others.sentences(site).forEach(line -> out.println("  " + line));
        }
        out.flush();
        return plan.warns() ? MAY_NOT_HOLD : ExitCode.OK;
    }

    private long now() {
        if (at == null) {
            return System.currentTimeMillis() / 1000;
        }
        try {
            return OffsetDateTime.parse(at).toEpochSecond();
        } catch (DateTimeException e) {
            throw new IllegalArgumentException("--at " + at + " is no time; write it as 2026-01-10T16:00Z", e);
        }
    }

    private Course course(Site site, Optional<RecordedEvening> seen, Learned learned, Past past, long nowS) {
        OptionalDouble outsideNowC = outside(seen.map(RecordedEvening::evening));
        OutsideAir now = outsideC == null && seen.isPresent()
                ? seen.get().evening().outside()
                : outsideNowC.isPresent()
                        ? new OutsideAir.Seen(nowS, outsideNowC.getAsDouble(), OptionalDouble.empty())
                        : OutsideAir.UNSEEN;
        Optional<Forecast> said =
                forecast == null ? Remembered.forecast(past) : Optional.of(HourlyCsv.read(forecast, site.zone()));
        ForecastErrors errors =
                said.map(from -> Remembered.errors(past, from.source())).orElse(ForecastErrors.USUAL);
        CourseMaker maker = new CourseMaker(learned.sun());
        if (forecast == null && outsideNowC.isEmpty()) {
            throw new IllegalArgumentException(
                    "nobody knows how cold it is outside: there is no record of the last hour in " + data
                            + ". Say it with --outside-C, or hand over a forecast with --forecast.");
        }
        Optional<Course> made = maker.from(nowS, now, said, errors, learned.diary());
        if (forecast != null) {
            return made.filter(course -> course.basis() instanceof Course.Basis.Forecasted)
                    .orElseGet(() -> PlainCourse.of(said.orElseThrow(), nowS));
        }
        return made.filter(course -> course.basis() instanceof Course.Basis.Forecasted)
                .or(() -> byOutlook(seen, outsideNowC.getAsDouble(), nowS))
                .or(() -> made)
                .orElseThrow(); // the outside is known, so there is a guess
    }

    /** By the one number that control knew of the night. */
    private static Optional<Course> byOutlook(Optional<RecordedEvening> seen, double outsideNowC, long nowS) {
        if (seen.isPresent() && seen.get().outlook() instanceof Outlook.Night night) {
            long endS = seen.get().evening().epochS() + (long) night.endsInS();
            if (endS > nowS + 3600) {
                return Optional.of(PlainCourse.of(
                        "the service", nowS, outsideNowC, night.lowestOutsideC(), night.spreadK(), endS));
            }
        }
        return Optional.empty();
    }

    private OptionalDouble outside(Optional<Evening> seen) {
        if (outsideC != null) {
            return OptionalDouble.of(outsideC);
        }
        return seen.isPresent() && seen.get().outside() instanceof OutsideAir.Seen air
                ? OptionalDouble.of(air.airC())
                : OptionalDouble.empty();
    }

    private PlanStart start(Site site, Optional<Evening> seen, Course course, long nowS) {
        OptionalDouble inside = given(insideC, seen.map(Evening::insideC));
        double airC = inside.orElseGet(() -> assumedInsideC(site, course));
        boolean full = seen.map(Evening::tankFull).orElse(false);
        return new PlanStart(
                nowS,
                airC,
                optional(massC),
                given(rhPercent, seen.map(Evening::rhPercent)),
                tankL != null ? OptionalDouble.of(tankL) : full ? OptionalDouble.of(0) : OptionalDouble.empty());
    }

    private double assumedInsideC(Site site, Course course) {
        double outsideNowC = outsideC != null ? outsideC : course.steps().get(0).airC();
        double corner =
                cornerK != null ? cornerK : PlanChoices.USUAL_CORNER_K; // the floor is held for the coldest bench
        double heldC = site.floorC() + site.targets().guardMarginK() + corner;
        double airC = Math.max(heldC, outsideNowC + DUSK_LIFT_K);
        assumed.add("the air inside is at " + site.degrees().text(airC) + " (say it with --inside-C)");
        return airC;
    }

    private PlanChoices choices(Site site, Optional<Evening> seen) {
        PlanChoices usual = PlanChoices.usual(site)
                .without(seen.map(Evening::out).orElse(RelaySet.none()))
                .warningAt(chancePercent / 100);
        OptionalDouble corner = given(cornerK, seen.map(Evening::cornerK));
        if (corner.isEmpty()) {
            assumed.add(String.format(
                    Locale.ROOT,
                    "the coldest bench is %s colder than the middle",
                    site.degrees().span(PlanChoices.USUAL_CORNER_K)));
            return usual;
        }
        return usual.withCorner(corner.getAsDouble());
    }

    private static OptionalDouble given(@Nullable Double said, Optional<OptionalDouble> seen) {
        return said != null ? OptionalDouble.of(said) : seen.orElse(OptionalDouble.empty());
    }

    private static OptionalDouble optional(@Nullable Double said) {
        return said == null ? OptionalDouble.empty() : OptionalDouble.of(said);
    }
}
