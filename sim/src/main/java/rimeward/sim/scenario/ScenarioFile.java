package rimeward.sim.scenario;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import rimeward.adapter.config.BadSettings;
import rimeward.adapter.config.Faults;
import rimeward.adapter.config.Kinds;
import rimeward.adapter.config.SiteSettings;
import rimeward.adapter.config.TableReader;
import rimeward.adapter.config.TomlTree;
import rimeward.sim.fault.Fault;
import rimeward.sim.fault.FaultPlan;
import rimeward.sim.weather.ForecastModel;
import rimeward.sim.weather.Span;
import rimeward.sim.weather.WeatherFileException;
import rimeward.sim.weather.WeatherSeries;
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
        long seed = seed();
        Clock stated = Clock.read(top.table("time"));
        Optional<WeatherChoice> choice = WeatherSettings.read(top.table("weather"), folder, seed);
        ForecastModel forecast = forecast(top.optionalTable("forecast"), seed);
        Gates gates = gates();
        Optional<Site> site = site();
        Optional<Truth> read = Truth.read(top.optionalTable("truth"), site);
        Optional<WeatherSeries> other = otherWeather(choice);
        Clock clock = clock(stated, other);
        FaultPlan plan = faultPlan(site, clock);
        List<StandDownAt> orders = orders(site, clock);
        faults.throwIfAny();
        Truth truth = read.orElseThrow();
        return new Scenario(
                id(),
                title,
                description,
                site.orElseThrow(),
                truth.tunnel(),
                truth.machines().backstop(),
                truth.machines().byHand(),
                truth.sensors(),
                truth.doorContact(),
                truth.start(),
                other.isPresent() ? other.get() : choice.orElseThrow().of(clock.span()),
                forecast,
                clock.startEpochS(),
                clock.lengthS(),
                clock.tickS(),
                clock.traceEveryS(),
                seed,
                clock.offset(),
                plan,
                orders,
                truth.rounds().from(clock.start()),
                law,
                against,
                gates);
    }

    private long seed() {
        int stated = top.get("seed", Kinds.whole(0, Integer.MAX_VALUE), 1);
        Long other = asked.seed();
        return other == null ? stated : other;
    }

    private static ForecastModel forecast(TableReader table, long seed) {
        double biasK = table.get("bias_K", Kinds.number(-10, 10), 0.0);
        double spreadK = table.get("spread_K", Kinds.number(0, 10), 0.0);
        return new ForecastModel(biasK, spreadK, seed);
    }

    /** What the command line asks counts only where the file is sound: its faults come first. */
    private Clock clock(Clock stated, Optional<WeatherSeries> other) throws BadInput {
        if (!top.isSound()) {
            return stated;
        }
        return other.isPresent() ? stated.with(asked, other.get()) : stated.with(asked);
    }

    private FaultPlan faultPlan(Optional<Site> site, Clock clock) {
        if (site.isEmpty()) {
            top.has("fault"); // known, but cannot be read without the site's names
            return FaultPlan.none();
        }
        List<Fault> read = new FaultSettings(clock.start(), site.get()).read(top);
        return new FaultPlan(read);
    }

    private List<StandDownAt> orders(Optional<Site> site, Clock clock) {
        if (site.isEmpty()) {
            top.has("order"); // known, as faults are
            return List.of();
        }
        return new OrderSettings(clock.start(), site.get()).read(top);
    }

    private String id() {
        String name = String.valueOf(file.getFileName());
        return name.endsWith(".toml") ? name.substring(0, name.length() - ".toml".length()) : name;
    }

    /** The settings file with the scenario's {@code [settings]} laid over it. */
    private Optional<Site> site() {
        Optional<Path> settings = named("settings_file", top.get("settings_file", Kinds.text()));
        Optional<TomlTree> overlay = top.subtree("settings");
        if (settings.isEmpty()) {
            return Optional.empty();
        }
        TomlTree tree = TomlTree.read(settings.get());
        return SiteSettings.read(overlay.map(tree::with).orElse(tree), faults);
    }

    /** A file of gates, and the scenario's own over it. */
    private Gates gates() {
        Gates own = Gates.read(top.optionalTable("gates"));
        Optional<Path> shared = top.find("gates_file", Kinds.text()).flatMap(name -> named("gates_file", name));
        return shared.isPresent() ? Gates.read(shared.get()).with(own) : own;
    }

    /** A file that a key names, relative to the scenario's folder; none, with a fault, if it is not there. */
    private Optional<Path> named(String key, String name) {
        if (!top.has(key)) {
            return Optional.empty();
        }
        Path path = folder.resolve(name);
        if (!Files.isRegularFile(path)) {
            top.fault(key, "names a file that is not there: " + path, "check the path; it is relative to the scenario");
            return Optional.empty();
        }
        return Optional.of(path);
    }

    private Optional<WeatherSeries> otherWeather(Optional<WeatherChoice> choice) throws WeatherFileException {
        Path other = asked.weather();
        return other == null || choice.isEmpty()
                ? Optional.empty()
                : Optional.of(choice.get().from(other).of(Span.ALL));
    }
}
