package rimeward.app;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rimeward.adapter.config.SiteSettings;
import rimeward.adapter.journal.RecordCsv;
import rimeward.adapter.journal.RecordFile;
import rimeward.record.FrameRow;
import rimeward.record.WeatherCsv;
import rimeward.site.Site;

/** {@code rimeward record}: what the service wrote down. */
@Command(
        name = "record",
        mixinStandardHelpOptions = true,
        description = "Shows the nights of a record, exports it as CSV, or fills a fresh one from an export.")
final class RecordCommand implements Runnable {

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "FILE", description = "the record, as /var/lib/rimeward/record.db")
    private Path file = Path.of("record.db"); // always replaced: the argument is required

    @Command(name = "nights", mixinStandardHelpOptions = true, description = "One line a night, from noon to noon.")
    int nights(
            @Option(names = "--settings", paramLabel = "FILE", description = "settings, for the currency") @Nullable
                    Path settings) {
        String currency =
                settings == null ? "" : SiteSettings.read(settings).tariff().currency();
        print(NightTable.of(RecordFile.nights(file), RecordFile.plans(file), currency));
        return 0;
    }

    @Command(
            name = "export",
            mixinStandardHelpOptions = true,
            description = {
                "Writes every table as CSV into a folder.",
                "With --settings and --place also weather.csv, which rimeward-sim replay --weather reads."
            })
    int export(
            @Parameters(paramLabel = "DIR", description = "where to write") Path folder,
            @Option(
                            names = "--settings",
                            paramLabel = "FILE",
                            description = "settings, to know which sensor hangs outside")
                    @Nullable
                    Path settings,
            @Option(
                            names = "--place",
                            paramLabel = "DEG,DEG,M",
                            split = ",",
                            description = "latitude, longitude, altitude")
                    @Nullable
                    List<Double> place,
            @Option(
                            names = "--wind",
                            paramLabel = "M/S",
                            defaultValue = "1.5",
                            description = "assumed wind (${DEFAULT-VALUE})")
                    double windMPerS,
            @Option(
                            names = "--cloud",
                            paramLabel = "FRACTION",
                            defaultValue = "0.5",
                            description = "assumed cloud (${DEFAULT-VALUE})")
                    double cloudFraction) {
        if (place != null && (settings == null || place.size() != 3)) {
            throw new ParameterException(
                    spec.subcommands().get("export"),
                    "--place needs three numbers, as 54.40,-2.10,240, and --settings FILE beside it");
        }
        RecordCsv.export(file, folder);
        String weather = "";
        if (place != null && settings != null) {
            weather(SiteSettings.read(settings), place, windMPerS, cloudFraction, folder.resolve("weather.csv"));
            weather = "; the outside in weather.csv";
        }
        print("Written to " + folder + ": one file for each table" + weather + ".\n");
        return 0;
    }

    private void weather(Site site, List<Double> place, double windMPerS, double cloudFraction, Path to) {
        WeatherCsv csv = new WeatherCsv(site, windMPerS, cloudFraction);
        try (Writer out = Files.newBufferedWriter(to, UTF_8)) {
            out.write(csv.header(place.get(0), place.get(1), place.get(2)));
            for (FrameRow row : RecordFile.frames(file)) {
                out.write(csv.row(row).orElse(""));
            }
        } catch (IllegalArgumentException e) {
            throw new ParameterException(spec.subcommands().get("export"), file + ": " + e.getMessage());
        } catch (IOException e) {
            throw new ParameterException(
                    spec.subcommands().get("export"),
                    to + " cannot be written: " + e.getMessage() + "; name another folder");
        }
    }

    @Command(
            name = "import",
            mixinStandardHelpOptions = true,
            description = "Makes FILE, which must not exist, from the folder of an export.")
    int importFrom(@Parameters(paramLabel = "DIR", description = "what export wrote") Path folder) {
        RecordCsv.importInto(file, folder);
        print("Made " + file + " from " + folder + ".\n");
        return 0;
    }

    @Override
    public void run() {
        nights(null);
    }

    private void print(String text) {
        spec.commandLine().getOut().print(text);
        spec.commandLine().getOut().flush();
    }
}
