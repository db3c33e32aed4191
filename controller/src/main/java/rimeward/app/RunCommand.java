package rimeward.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.ExitCode;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rimeward.adapter.config.SiteSettings;
import rimeward.adapter.pi.PiHealth;
import rimeward.adapter.pi.PiRelays;
import rimeward.adapter.pi.PiSensors;
import rimeward.assembly.Service;
import rimeward.core.decision.DutyLaw;
import rimeward.port.HandedReadings;
import rimeward.service.BeatTicker;
import rimeward.site.Attached;
import rimeward.site.Site;
import rimeward.site.Wiring;

/** {@code rimeward run}: the service. One for each data folder. */
@Command(
        name = "run",
        mixinStandardHelpOptions = true,
        description = "Runs the service: reads the sensors and switches the machines until it is stopped.")
final class RunCommand implements Callable<Integer> {
    /** What systemd starts again (sysexits.h: internal software error). */
    private static final int CONTROL_FAILED = 70;

    /** The same (temporary failure): whoever holds the data, `rimeward wiring` perhaps, ends some time. */
    private static final int HELD = 75;

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "FILE", description = "settings of this tunnel")
    private Path file = Path.of("config", "tunnel.toml");

    @Option(names = "--data", paramLabel = "DIR", description = "where the record is kept (default: ${DEFAULT-VALUE})")
    private Path data = Path.of("/var/lib/rimeward");

    @Option(
            names = "--root",
            paramLabel = "DIR",
            description = "where the kernel's files of sensors and chips are found (default: ${DEFAULT-VALUE})")
    private Path root = Path.of("/");

    @Option(
            names = "--stand-in",
            paramLabel = "DIR",
            description = "a plain folder in place of sensors and relays, to try the service without any")
    private @Nullable Path standIn;

    @Override
    public Integer call() throws IOException {
        Site site = SiteSettings.read(file);
        if (standIn == null && !isAttached(site)) {
            return refuse(
                    file + " attaches no sensor or no heater relay, so nothing could be held above the floor. Fill in"
                            + " [sensor.attached] and [heater.stage.relay] as the example shows (`rimeward wiring` finds what is"
                            + " there), or try the service without any: --stand-in DIR.");
        }
        Log log = new Log(site, spec.commandLine().getOut());
        try (DataLock lock = locked(log)) {
            if (lock == null) {
                refuse("Another rimeward runs with the data in " + data
                        + ". Stop it first, or name another folder with --data.");
                return HELD;
            }
            return run(site, log);
        }
    }

    /** Null while another holds it. A folder that cannot be written is no reason to leave plants without heat. */
    private @Nullable DataLock locked(Log log) {
        try {
            Files.createDirectories(data);
            return DataLock.take(data);
        } catch (IOException e) {
            log.says("the data folder " + data + " cannot be written, and control goes on without a record: " + e
                    + ". Mend the disk, or name another folder with --data.");
            return DataLock.none();
        }
    }

    private int refuse(String why) {
        spec.commandLine().getErr().println(why);
        return ExitCode.USAGE;
    }

    private static boolean isAttached(Site site) {
        return site.sensors().stream().anyMatch(s -> !(s.attached() instanceof Attached.NotAttached))
                && site.heater().stages().stream().anyMatch(s -> s.wiring() instanceof Wiring.GpioLine);
    }

    private int run(Site site, Log log) {
        ServiceManager manager = new ServiceManager();
        LinuxSurroundings here = here(site, manager);
        OrderlyEnd end = OrderlyEnd.of(Thread.currentThread(), () -> {
            manager.stopping();
            here.stop();
        });
        log.says(site.name() + ", floor " + Plain.number(site.floorC()) + " °C, a decision every "
                + BeatTicker.BEAT_MS / 1000 + " s");
        try {
            new Service(site, new DutyLaw(), data, here, log, System::nanoTime).run();
            return ExitCode.OK;
        } catch (RuntimeException | Error e) {
            log.says("control itself failed: " + e);
            PrintWriter err = spec.commandLine().getErr();
            e.printStackTrace(err);
            err.flush();
            return CONTROL_FAILED;
        } finally {
            log.says("stopped, relays in their stop state: " + site.inWords(site.stopState()));
            end.reached();
        }
    }

    private LinuxSurroundings here(Site site, ServiceManager manager) {
        PiHealth health = PiHealth.of(root, data, System::nanoTime);
        if (standIn != null) {
            FolderDevices folder = new FolderDevices(site, standIn);
            Runnable atEnd = () -> {
                folder.close(site.stopState());
                health.close();
            };
            return new LinuxSurroundings(
                    site, folder, folder, HandedReadings.nowhere(), health, atEnd, manager::cycleDone);
        }
        PiRelays relays = PiRelays.of(site, root);
        PiSensors sensors = PiSensors.of(site, root, System::nanoTime);
        Runnable atEnd = () -> {
            relays.close();
            sensors.close();
            health.close();
        };
        return new LinuxSurroundings(site, sensors, relays, sensors.handedIn(), health, atEnd, manager::cycleDone);
    }
}
