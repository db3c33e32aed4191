package rimeward.sim.scenario;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import rimeward.adapter.config.BadSettings;
import rimeward.adapter.config.Faults;
import rimeward.adapter.config.Kinds;
import rimeward.adapter.config.SiteSettings;
import rimeward.adapter.config.TableReader;
import rimeward.adapter.config.TomlTree;
import rimeward.sim.device.SensorVices;
import rimeward.sim.fault.Fault;
import rimeward.sim.fault.FaultPlan;
import rimeward.sim.physics.StartState;
import rimeward.sim.physics.TunnelParameters;
import rimeward.sim.weather.ForecastModel;
import rimeward.sim.weather.Span;
import rimeward.sim.weather.WeatherFileException;
import rimeward.sim.weather.WeatherSeries;
import rimeward.sim.world.GrowerRounds;
import rimeward.site.Site;

/**
 * Reads {@code config/scenarios/*.toml}. Faults of the scenario and of the files it names are told all at once; those of the weather
 * file after them.
 */
public final class ScenarioFile {
    private final Path file;
    private final Path folder;
    private final Overrides asked;
    private final Faults faults = new Faults();
    private final TableReader top;

    private ScenarioFile(Path file, Overrides asked) {
        this.file = file;
        this.asked = asked;
        folder = Optional.ofNullable(file.getParent()).orElse(Path.of(""));
        top = faults.reader(TomlTree.read(file));
    }

    /**
     * Reads one scenario.
     *
     * @throws BadInput with everything that is wrong with it, with the settings it names, or then with its weather file
     */
    public static Scenario read(Path file, Overrides asked) throws BadInput {
        try {
            return new ScenarioFile(file, asked).scenario();
        } catch (BadSettings | WeatherFileException e) {
            throw new BadInput(String.valueOf(e.getMessage()), e);
        }
    }

    private Scenario scenario() throws WeatherFileException, BadInput {
        String title = top.get("title", Kinds.text());
        String description = top.get("description", Kinds.text());
        String law = top.get("law", Kinds.text(), "duty");
        List<String> against = top.has("against") ? top.list("against", Kinds.text()) : List.of();
        int seed = top.get("seed", Kinds.whole(0, Integer.MAX_VALUE), 1);
        Clock stated = Clock.read(top.table("time"));
        Optional<WeatherChoice> choice = WeatherSettings.read(top.table("weather"), folder, seed(seed));
        TableReader forecastTable = top.optionalTable("forecast");
        double biasK = forecastTable.get("bias_K", Kinds.number(-10, 10), 0.0);
        double spreadK = forecastTable.get("spread_K", Kinds.number(0, 10), 0.0);
        Gates gates = gates();
        Optional<Site> site = site();
        TableReader truth = top.optionalTable("truth");
        Optional<TunnelParameters> tunnel = TunnelTruth.read(truth);
        Optional<StartState> start = TunnelTruth.start(truth);
        if (site.isEmpty()) {
            top.has("fault"); // known, but cannot be read without the site's names
            List.of("heater", "dryer", "vent_fan", "sensor").forEach(truth::has);
        }
        Optional<MachineTruth.Dials> machines = site.flatMap(plates -> MachineTruth.read(truth, plates));
        boolean doorContact = truth.get("door_contact", Kinds.yesNo(), false);
        List<SensorVices> vices = site.flatMap(plates -> tunnel.map(real -> SensorTruth.read(truth, plates, real)))
                .orElse(List.of());
        TableReader roundsTable = truth.optionalTable("rounds");
        Optional<Times.Moment> first = roundsTable.find("first", Times.moment());
        Optional<Duration> every = roundsTable.find("every", Kinds.duration());
        Optional<WeatherSeries> other = otherWeather(choice);
        Clock clock = other.isPresent() ? stated.with(asked, other.get()) : stated.with(asked);
        List<Fault> plan = site.map(plates -> new FaultSettings(clock.start(), plates).read(top))
                .orElse(List.of());
        faults.throwIfAny();
        return new Scenario(
                id(),
                title,
                description,
                site.orElseThrow(),
                tunnel.orElseThrow(),
                machines.orElseThrow().backstop(),
                machines.orElseThrow().byHand(),
                vices,
                doorContact,
                start.orElseThrow(),
                other.isPresent() ? other.get() : choice.orElseThrow().of(clock.span()),
                new ForecastModel(biasK, spreadK, seed(seed)),
                clock.startEpochS(),
                clock.lengthS(),
                clock.tickS(),
                clock.traceEveryS(),
                seed(seed),
                clock.offset(),
                new FaultPlan(plan),
                rounds(first, every, clock),
                law,
                against,
                gates);
    }

    /** Nobody empties the tank unless the scenario says when. */
    private static GrowerRounds rounds(Optional<Times.Moment> first, Optional<Duration> every, Clock clock) {
        if (first.isEmpty()) {
            return GrowerRounds.none();
        }
        double firstS = (double) Math.max(0, first.get().afterStartS(clock.start()));
        double everyS = every.map(length -> (double) length.toSeconds()).orElse(Double.POSITIVE_INFINITY);
        return new GrowerRounds(firstS, Math.max(1, everyS));
    }

    private String id() {
        String name = String.valueOf(file.getFileName());
        return name.endsWith(".toml") ? name.substring(0, name.length() - ".toml".length()) : name;
    }

    private long seed(long stated) {
        Long other = asked.seed();
        return other == null ? stated : other;
    }

    /** The settings file with the scenario's {@code [settings]} laid over it. */
    private Optional<Site> site() {
        String settings = top.get("settings_file", Kinds.text());
        Optional<TomlTree> overlay = top.subtree("settings");
        if (!top.isSound()) {
            return Optional.empty();
        }
        TomlTree tree = TomlTree.read(folder.resolve(settings));
        return SiteSettings.read(overlay.map(tree::with).orElse(tree), faults);
    }

    /** A file of gates, and the scenario's own over it. */
    private Gates gates() {
        Optional<String> gatesFile = top.find("gates_file", Kinds.text());
        Gates own = Gates.read(top.optionalTable("gates"));
        return top.isSound() && gatesFile.isPresent()
                ? Gates.read(folder.resolve(gatesFile.get())).with(own)
                : own;
    }

    private Optional<WeatherSeries> otherWeather(Optional<WeatherChoice> choice) throws WeatherFileException {
        Path other = asked.weather();
        return other == null || choice.isEmpty()
                ? Optional.empty()
                : Optional.of(choice.get().from(other).of(Span.ALL));
    }
}
