package rimeward.app;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rimeward.adapter.config.SiteSettings;
import rimeward.site.Site;

/** {@code rimeward check}: tells what the settings were understood to mean, before anything is switched. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        description =
                "Tells what the settings mean: floor, sensors, load against the circuit, how cold a night they can hold.")
final class CheckCommand implements Runnable {

    @Spec
    private CommandSpec spec;

    @Parameters(
            index = "0",
            paramLabel = "FILE",
            arity = "0..1",
            description = "settings to check (default: ${DEFAULT-VALUE})")
    private Path file = Path.of("config", "tunnel.toml");

    @Override
    public void run() {
        Site site = SiteSettings.read(file);
        PrintWriter out = spec.commandLine().getOut();
        out.print(SiteSheet.of(site));
        List<String> advice = SiteAdvice.of(site);
        out.print(advice.isEmpty() ? "\nNothing unwise was found.\n" : "\nAllowed, but think again\n");
        advice.forEach(line -> out.print("  - " + line + "\n"));
        out.flush();
    }
}
