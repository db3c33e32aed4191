package rimeward.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.ExitCode;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rimeward.adapter.config.SiteSettings;
import rimeward.site.Site;

/** {@code rimeward run}: the service. One for each data folder. */
@Command(
        name = "run",
        mixinStandardHelpOptions = true,
        description = "Runs the service: reads the sensors and switches the machines until it is stopped.")
final class RunCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "FILE", description = "settings of this tunnel")
    private Path file = Path.of("config", "tunnel.toml");

    @Option(names = "--data", paramLabel = "DIR", description = "where the record is kept (default: ${DEFAULT-VALUE})")
    private Path data = Path.of("/var/lib/rimeward");

    @Option(
            names = "--stand-in",
            paramLabel = "DIR",
            description = "a plain folder in place of sensors and relays, to try the service without any")
    private @Nullable Path standIn;

    @Override
    public Integer call() throws IOException {
        PrintWriter err = spec.commandLine().getErr();
        Site site = SiteSettings.read(file);
        if (standIn == null) {
            err.println("This build reads no real sensors and switches no real relays yet."
                    + " Name a folder with --stand-in DIR to try the service.");
            return ExitCode.USAGE;
        }
        Files.createDirectories(data);
        try (FileChannel channel = FileChannel.open(
                        data.resolve("rimeward.lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
                FileLock lock = lock(channel)) {
            if (lock == null) {
                err.println("Another rimeward runs with the data in " + data
                        + ". Stop it first, or name another folder with --data.");
                return ExitCode.USAGE;
            }
            return new Service(
                            site,
                            data,
                            new FolderDevices(site, standIn),
                            spec.commandLine().getOut())
                    .run();
        }
    }

    private static @Nullable FileLock lock(FileChannel channel) throws IOException {
        try {
            return channel.tryLock();
        } catch (OverlappingFileLockException e) {
            return null; // held by this very program
        }
    }
}
