package rimeward.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.ExitCode;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rimeward.adapter.config.SiteSettings;
import rimeward.adapter.mqtt.Withdrawal;
import rimeward.site.Messaging;
import rimeward.site.Site;

/** {@code rimeward unpublish}: for a tunnel that is given up, or that gets another id. */
@Command(
        name = "unpublish",
        mixinStandardHelpOptions = true,
        description = {
            "Takes everything that this tunnel has said off its broker, for good: before it is given up, or gets another id.",
            "Stop the service first; if it runs again, it says everything anew."
        })
final class UnpublishCommand implements Callable<Integer> {
    private static final int FAILED = 1;

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "FILE", description = "settings of this tunnel")
    private Path file = Path.of("config", "tunnel.toml");

    @Option(names = "--data", paramLabel = "DIR", description = "the service's data (default: ${DEFAULT-VALUE})")
    private Path data = Path.of("/var/lib/rimeward");

    @Override
    public Integer call() throws IOException, InterruptedException {
        Site site = SiteSettings.read(file);
        PrintWriter err = spec.commandLine().getErr();
        if (!(site.messaging() instanceof Messaging.Mqtt mqtt)) {
            err.println(file + " names no broker: there is no [mqtt].");
            return ExitCode.USAGE;
        }
        try (DataLock lock = DataLock.takeIfThere(data)) {
            if (lock == null) {
                err.println("The service runs with the data in " + data
                        + " and would say everything anew. Stop it first: sudo systemctl stop rimeward");
                return FAILED;
            }
            return unpublish(site, mqtt);
        }
    }

    private int unpublish(Site site, Messaging.Mqtt mqtt) throws InterruptedException {
        try {
            int topics = Withdrawal.of(site, mqtt);
            spec.commandLine()
                    .getOut()
                    .println(site.id() + " is off " + mqtt.inWords() + ": "
                            + (topics == 0
                                    ? "nothing was kept of it."
                                    : topics + " topics were kept of it, and are no more."));
            return ExitCode.OK;
        } catch (IOException e) {
            spec.commandLine().getErr().println("Not taken off: " + e.getMessage() + ". Try again.");
            return FAILED;
        }
    }
}
