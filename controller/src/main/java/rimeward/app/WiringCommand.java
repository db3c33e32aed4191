package rimeward.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.ExitCode;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rimeward.adapter.config.SiteSettings;
import rimeward.adapter.pi.Inventory;
import rimeward.adapter.pi.LinesRefused;
import rimeward.adapter.pi.PiRelays;
import rimeward.adapter.pi.PiSensors;
import rimeward.core.reading.Reading;
import rimeward.core.reading.Senses;
import rimeward.fitting.Clicks;
import rimeward.fitting.DialSession;
import rimeward.fitting.DialTable;
import rimeward.fitting.GuardedRelays;
import rimeward.fitting.Mark;
import rimeward.site.Place;
import rimeward.site.Site;

/** {@code rimeward wiring}: tries the hardware by hand, before the service does. */
@Command(
        name = "wiring",
        mixinStandardHelpOptions = true,
        description = {
            "Finds what hangs on this machine, reads every sensor, and clicks every relay by name once you say so.",
            "Relays always end in their stop state. Refused while the service runs."
        })
final class WiringCommand implements Callable<Integer> {
    /** A DHT22 is asked every 2.5 s and may need a second try. */
    private static final int FIRST_READING_S = 6;

    private static final String CAUTION = """
            CAUTION: disconnect the mains load first (plugs out, or the circuit's switch off). Two seconds under load wear
            contacts and harm a compressor. The mains side is work for a licensed electrician, by your local code.""";

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", arity = "0..1", paramLabel = "FILE", description = "settings (default: ${DEFAULT-VALUE})")
    private Path file = Path.of("/etc/rimeward/tunnel.toml");

    @Option(names = "--yes", description = "click every relay without asking, also without a terminal")
    private boolean yes;

    @Option(
            names = "--dial",
            paramLabel = "STAGE",
            description = "instead of clicking: find out what the marks on this heater stage's dial mean")
    private @Nullable String dial;

    @Option(
            names = "--by",
            paramLabel = "SENSOR",
            description = "with --dial: the inside sensor nearest to the heater (default: the first)")
    private @Nullable String by;

    @Option(
            names = "--swings",
            paramLabel = "N",
            description = "with --dial: on and off so often (default: ${DEFAULT-VALUE})")
    private int swings = 3;

    @Option(names = "--csv", paramLabel = "FILE", description = "with --dial: write the table there too")
    private @Nullable Path csv;

    @Option(names = "--data", paramLabel = "DIR", description = "the service's data folder (default: ${DEFAULT-VALUE})")
    private Path data = Path.of("/var/lib/rimeward");

    @Option(names = "--root", hidden = true, description = "a folder in place of /")
    private Path root = Path.of("/");

    @Override
    public Integer call() throws IOException {
        HardwareLog.off(); // what is wrong is told here in a table
        Site site = SiteSettings.read(file);
        Terminal terminal = new Terminal(spec.commandLine().getOut());
        DialSession.@Nullable Choice choice = dial == null ? null : choice(site, dial);
        if (choice != null && !Terminal.isThere()) {
            return refused(
                    "--dial needs a terminal, for somebody has to turn the dial and type its marks. Nothing was touched.");
        }
        try (DataLock lock = locked()) {
            if (lock == null) {
                return refused(
                        "The service runs, and holds relays and sensors. Stop it first: sudo systemctl stop rimeward"
                                + " (start it again afterwards).");
            }
            return tried(site, terminal, choice);
        } catch (AccessDeniedException e) {
            return refused("Whether the service runs cannot be seen: " + e.getMessage()
                    + " is closed to you. Run this with sudo.");
        } catch (LinesRefused e) {
            return refused("No relay was moved: " + e.getMessage());
        }
    }

    /** Null while the service holds it. On a disk that is read-only the kernel's own hold on lines must do. */
    private @Nullable DataLock locked() throws AccessDeniedException {
        try {
            return DataLock.takeIfThere(data);
        } catch (AccessDeniedException e) {
            throw e;
        } catch (IOException e) {
            return DataLock.none();
        }
    }

    private int tried(Site site, Terminal terminal, DialSession.@Nullable Choice choice) throws IOException {
        InventorySheet.Sheet sheet =
                InventorySheet.of(site, Inventory.of(root, System::nanoTime)); // before anybody reads
        terminal.say(sheet.text());
        try (PiSensors sensors = PiSensors.of(site, root, System::nanoTime)) {
            Senses senses = firstReadings(site, sensors, terminal);
            terminal.say(LiveSheet.of(site, senses));
            if (!site.isWired()) {
                terminal.say("No machine has a relay on a line in the settings: none is clicked.");
            } else if (!yes && !Terminal.isThere()) {
                terminal.say("No relay is clicked: nobody is at a terminal to listen. --yes clicks them all the same.");
            } else {
                warnOfCold(site, senses, terminal);
                withRelays(site, relays -> {
                    if (choice == null) {
                        terminal.say(CAUTION);
                        new Clicks(site, relays, terminal, terminal).run(!yes);
                    } else {
                        dial(site, sensors, relays, terminal, choice);
                    }
                });
                terminal.say(
                        "\nAll relays are in their stop state; closed there: " + site.inWords(site.stopState()) + ".");
            }
            return sheet.complete() && LiveSheet.isSound(site, senses) ? ExitCode.OK : 1;
        }
    }

    /** Ctrl-C comes on a thread of its own, and finds the relays guarded. */
    private void withRelays(Site site, Consumer<GuardedRelays> use) {
        PiRelays lines = PiRelays.atStop(site, root);
        GuardedRelays relays = new GuardedRelays(site, lines, lines::close);
        Thread hook = new Thread(relays::close, "relays to their stop state");
        Runtime.getRuntime().addShutdownHook(hook);
        try (relays) {
            use.accept(relays);
        }
    }

    private static Senses firstReadings(Site site, PiSensors sensors, Terminal terminal) {
        Senses senses = sensors.latch();
        for (int s = 0; s < FIRST_READING_S && !LiveSheet.isSound(site, senses); s++) {
            terminal.waitS(1);
            senses = sensors.latch();
        }
        return senses;
    }

    private static void warnOfCold(Site site, Senses senses, Terminal terminal) {
        double nearC =
                site.floorC() + site.targets().guardMarginK() + site.targets().differentialK();
        for (int i = 0; i < site.sensors().size(); i++) {
            if (site.sensors().get(i).place().isInside()
                    && senses.sensors().get(i).airC() instanceof Reading.Value air
                    && air.value() <= nearC) {
                terminal.say("IT IS COLD: " + site.sensors().get(i).id() + " reads " + Plain.number(air.value())
                        + " °C, the floor is " + Plain.number(site.floorC())
                        + " °C, and nothing controls the tunnel meanwhile. Keep it short.");
                return;
            }
        }
    }

    // ---- the dial

    private DialSession.Choice choice(Site site, String stage) {
        int heater = site.machineIds().indexOf(stage);
        if (heater < 0 || !site.heaterStages().has(heater)) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--dial " + stage + " is no heater stage; there are: " + site.inWords(site.heaterStages()));
        }
        List<String> inside = site.sensors().stream()
                .filter(sensor -> sensor.place() instanceof Place.Bench)
                .map(sensor -> sensor.id())
                .toList();
        String near = by == null ? inside.get(0) : by;
        if (!inside.contains(near)) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--by " + near + " is no inside sensor; there are: " + String.join(", ", inside));
        }
        if (swings < 1 || swings > 20) {
            throw new ParameterException(
                    spec.commandLine(), "--swings is " + swings + "; it must lie between 1 and 20");
        }
        List<String> all = site.sensors().stream().map(sensor -> sensor.id()).toList();
        return new DialSession.Choice(heater, all.indexOf(near), swings);
    }

    private void dial(
            Site site, PiSensors sensors, GuardedRelays relays, Terminal terminal, DialSession.Choice choice) {
        terminal.say(
                "The heater runs on its own thermostat, under mains. Stay with it; keep it clear of film and plants.");
        List<Mark> marks = new DialSession(site, sensors, relays, terminal, terminal, choice).run();
        terminal.say("\n" + DialTable.of(marks));
        terminal.say(
                "Turn the dial to where it shall stay before you go: in the stop state it is what holds the floor.");
        if (csv != null) {
            try {
                Files.writeString(csv, DialTable.csv(marks), StandardCharsets.UTF_8);
                terminal.say("Written to " + csv + ".");
            } catch (IOException e) {
                refused("The table cannot be written to " + csv + " (" + e.getMessage() + "); copy it from above.");
            }
        }
    }

    private int refused(String sentence) {
        PrintWriter err = spec.commandLine().getErr();
        err.println(sentence);
        err.flush();
        return ExitCode.USAGE;
    }
}
