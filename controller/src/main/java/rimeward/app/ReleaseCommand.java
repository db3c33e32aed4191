package rimeward.app;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.ExitCode;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rimeward.adapter.config.BadSettings;
import rimeward.adapter.config.SiteSettings;
import rimeward.adapter.pi.LinesRefused;
import rimeward.adapter.pi.PiRelays;
import rimeward.site.Site;

/** {@code rimeward release}: what systemd runs after the service has ended, however it ended. */
@Command(
        name = "release",
        mixinStandardHelpOptions = true,
        description = {
            "Puts every relay into its stop state and lets go of its line; for after a service that was killed.",
            "Quiet when all went well."
        })
final class ReleaseCommand implements Callable<Integer> {
    /** What the service ends with when it cannot run until a person has changed something (the unit's RestartPreventExitStatus=). */
    private static final String NOT_STARTED_AGAIN = "2";

    /** How systemd marks a line as an alert in its journal (sd-daemon(3)). */
    private static final String ALERT = "<1>";

    private final Map<String, String> environment;

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "FILE", description = "settings of this tunnel")
    private Path file = Path.of("config", "tunnel.toml");

    @Option(names = "--root", hidden = true, description = "a folder in place of /")
    private Path root = Path.of("/");

    ReleaseCommand() {
        this(System.getenv());
    }

    /** @param environment systemd tells there how the service ended (systemd.exec(5), $EXIT_STATUS) */
    ReleaseCommand(Map<String, String> environment) {
        this.environment = environment;
    }

    @Override
    public Integer call() {
        shoutIfItStaysDown();
        Site site = settings();
        if (!site.isWired()) {
            return ExitCode.OK; // nor is anything of Pi4J loaded
        }
        HardwareLog.off(); // it would say the same once more
        try {
            PiRelays.release(site, root);
            return ExitCode.OK;
        } catch (LinesRefused e) {
            e.why().lines().forEach(why -> say("not in its stop state: " + why));
            return 1;
        }
    }

    private Site settings() {
        try {
            return SiteSettings.read(file);
        } catch (BadSettings e) {
            say("the relays stay as they are: which lines they hang on is not known while the settings are refused");
            throw e;
        }
    }

    private void shoutIfItStaysDown() {
        if (NOT_STARTED_AGAIN.equals(environment.get("EXIT_STATUS"))) {
            say(
                    "THE TUNNEL IS NOT CONTROLLED, and the service is not started again: what it asked for above must be put"
                            + " right by a person. Then: rimeward check " + file + ", and systemctl restart rimeward");
        }
    }

    private void say(String line) {
        PrintWriter err = spec.commandLine().getErr();
        err.println((environment.containsKey("SERVICE_RESULT") ? ALERT : "") + "rimeward: " + line);
        err.flush();
    }
}
