package rimeward.app;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.ExitCode;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import rimeward.adapter.config.SiteSettings;
import rimeward.page.SizeJson;
import rimeward.sizing.Input;
import rimeward.sizing.Inputs;
import rimeward.sizing.Naming;
import rimeward.sizing.Question;
import rimeward.sizing.Refused;
import rimeward.sizing.Sheet;

/** {@code rimeward size}: the heat-loss sheet, before anything is bought. */
@Command(
        name = "size",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        modelTransformer = SizeOptions.class,
        description = {
            "The heat-loss sheet before anything is bought: what a tunnel loses, what heater and circuit it needs, what a winter costs,"
                    + " and what insulation would save.",
            "Hoops: --width-m, --length-m, and --height-m if they are no half circles. A ridge roof: --eaves-m too."
        },
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:the heater fits the circuit",
            "1:it does not; the sheet says what would",
            "2:wrong usage, bad settings, or a file that cannot be used"
        })
final class SizeCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Option(
            names = "--cover",
            paramLabel = "KIND",
            description =
                    "roof and sides: single-film, double-film, bubble-lined-film, twin-wall or glass; without it single-film")
    private @Nullable String cover;

    @Option(names = "--ends", paramLabel = "KIND", description = "both ends, the same words; without it as the roof")
    private @Nullable String ends;

    @Option(
            names = "--insulation",
            paramLabel = "WORD",
            split = ",",
            description = "what is done already or decided: bubble-lining, bubble-lined-ends, second-film, sealed-gaps,"
                    + " edge-board, smaller-part; parted by commas")
    private List<String> insulation = List.of();

    @Option(
            names = "--weather",
            paramLabel = "FILE",
            description = "a winter's outside air: CSV with \"time\" and \"air °C\" (as record export writes it), daily"
                    + " \"lowest-air °C\" and \"highest-air °C\", or EPW; without it nothing is said of kWh and money")
    private @Nullable Path weather;

    @Option(
            names = "--settings",
            paramLabel = "FILE",
            description = "settings, for floor, altitude, circuit and prices; options go before them")
    private @Nullable Path settings;

    @Option(names = "--currency", paramLabel = "WORD", description = "of all prices; without it the settings' or GBP")
    private @Nullable String currency;

    @Option(names = "--json", description = "one line of JSON for programs")
    private boolean json;

    @Override
    public Integer call() {
        try {
            Sheet sheet = sheet();
            PrintWriter out = spec.commandLine().getOut();
            out.print(json ? SizeJson.of(sheet) : SizeSheet.of(sheet));
            out.flush();
            return sheet.heater().fits() ? ExitCode.OK : ExitCode.SOFTWARE;
        } catch (Refused e) {
            PrintWriter err = spec.commandLine().getErr();
            e.faults().forEach(err::println);
            err.flush();
            return ExitCode.USAGE;
        }
    }

    private Sheet sheet() throws Refused {
        Inputs inputs = new Inputs(Naming.OPTIONS);
        for (Input input : Input.values()) {
            inputs.given(input, spec.findOption(input.option()).getValue());
        }
        Question question = new Question(inputs);
        if (settings != null) {
            question.settings(SiteSettings.read(settings), "settings " + settings);
        }
        Path file = weather;
        if (file != null) {
            SizeWeather.read(file, inputs).ifPresent(read -> question.weather(file.toString(), read));
        }
        return question.sheet(cover, ends, insulation, currency);
    }
}
