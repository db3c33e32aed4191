package rimeward.sim.sweep;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import rimeward.sim.fault.Fault;
import rimeward.sim.scenario.BadInput;
import rimeward.sim.scenario.Overrides;
import rimeward.sim.scenario.Scenario;
import rimeward.sim.scenario.ScenarioFile;
import rimeward.sim.scenario.StandDownAt;
import rimeward.sim.weather.Place;

/** A scenario that was made, as the three files that {@code rimeward-sim replay} reads: scenario, settings, weather. */
final class ScenarioText {
    private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss", Locale.ROOT);
    private static final long DAY_S = 86_400;

    private final Scenario scenario;
    private final Toml to = new Toml();

    private ScenarioText(Scenario scenario) {
        this.scenario = scenario;
    }

    /** Writes it into a folder, over what was there before. */
    static Path write(Scenario scenario, Place place, Path folder) throws BadInput {
        Path file = folder.resolve(scenario.id() + ".toml");
        long endS = scenario.startEpochS() + scenario.lengthS();
        HourlyWeather weather = HourlyWeather.of(scenario.weather(), place, scenario.startEpochS(), endS);
        try {
            Files.createDirectories(folder);
            Files.writeString(folder.resolve(settingsName(scenario)), SettingsText.of(scenario.site()));
            Files.writeString(folder.resolve(weatherName(scenario)), weather.text());
            Files.writeString(file, new ScenarioText(scenario).write());
        } catch (IOException e) {
            throw new BadInput("cannot write the scenario " + file + " (" + e + "); is the disk full?", e);
        }
        return file;
    }

    /**
     * The scenario as it is read from its files: numbers have the digits of the files, so that a replay of them is the same to the last
     * bit.
     */
    static Scenario asRead(Scenario scenario, Place place, Path folder) throws BadInput {
        return ScenarioFile.read(write(scenario, place, folder), Overrides.NONE);
    }

    private static String settingsName(Scenario scenario) {
        return scenario.id() + "-tunnel.toml";
    }

    private static String weatherName(Scenario scenario) {
        return scenario.id() + "-weather.csv";
    }

    private String write() {
        to.text("title", scenario.title())
                .text("description", scenario.description())
                .text("settings_file", settingsName(scenario))
                .text("law", scenario.law())
                .texts("against", scenario.against())
                .whole("seed", scenario.seed());
        to.table("time")
                .line("start", STAMP.format(start()))
                .length("length", (double) scenario.lengthS())
                .text("utc_offset", "+00:00")
                .whole("tick_s", scenario.tickS())
                .whole("trace_every_s", scenario.traceEveryS());
        to.table("weather").text("file", weatherName(scenario));
        to.table("forecast")
                .real("bias_K", scenario.forecast().biasK())
                .real("spread_K", scenario.forecast().spreadK());
        new TruthText(scenario, to).write();
        rounds();
        scenario.faults().faults().forEach(this::fault);
        scenario.orders().forEach(this::order);
        return to.toString();
    }

    private LocalDateTime start() {
        return LocalDateTime.ofEpochSecond(scenario.startEpochS(), 0, ZoneOffset.UTC);
    }

    private void rounds() {
        if (scenario.rounds().firstS() < scenario.lengthS()) {
            to.table("truth.rounds")
                    .text("first", moment((long) scenario.rounds().firstS()));
            if (scenario.rounds().everyS() < Double.POSITIVE_INFINITY) {
                to.length("every", scenario.rounds().everyS());
            }
        }
    }

    private void fault(Fault fault) {
        to.element("fault").text("at", moment((long) fault.atS()));
        to.text("kind", fault.kind().label());
        if (fault.kind().needsTarget()) {
            to.text("of", fault.target());
        }
        if (fault.lastsS() > 0 && fault.lastsS() < Double.POSITIVE_INFINITY) {
            to.length("lasts", fault.lastsS());
        }
        if (!fault.kind().unit().isEmpty()) {
            to.real("by_" + fault.kind().unit().replace("/", "_per_"), fault.magnitude());
        }
    }

    private void order(StandDownAt order) {
        to.element("order")
                .text("at", moment(order.atS()))
                .text("kind", "stand-down")
                .text("machine", order.machineId())
                .length("for", order.forS());
    }

    private String moment(long atS) {
        long s = start().toLocalTime().toSecondOfDay() + atS;
        long ofDay = s % DAY_S;
        return String.format(
                Locale.ROOT, "day %d %02d:%02d:%02d", s / DAY_S + 1, ofDay / 3600, ofDay / 60 % 60, ofDay % 60);
    }
}
