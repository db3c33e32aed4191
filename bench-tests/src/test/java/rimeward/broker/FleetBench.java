package rimeward.broker;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.IntStream;
import rimeward.sim.scenario.Scenario;
import rimeward.site.Site;
import rimeward.winter.RandomWinter;

/**
 * What a broker bears of many tunnels: whole services in this one process, each with its own made tunnel, faults, record and line to one
 * Mosquitto. Measures and asserts nothing. Its own memory counts the simulated tunnels and the records too.
 *
 * <p>Arguments: how many tunnels, how fast their time goes, and for how many real seconds to look.
 */
final class FleetBench implements AutoCloseable {
    private static final int SPREAD_MS = 25; // tunnels do not decide in step
    private static final int GIVEN_UP_S = 300;

    private final Path dir = Files.createTempDirectory("rimeward-fleet-");
    private final Mosquitto broker;
    private Process ear;
    private final double speed;
    private final Set<String> ready = ConcurrentHashMap.newKeySet();
    private final AtomicLong messages = new AtomicLong();
    private final PacedService services;

    private FleetBench(int tunnels, double speed) throws IOException, InterruptedException {
        this.speed = speed;
        services = new PacedService(speed);
        broker = Mosquitto.begin(
                dir, IntStream.range(0, tunnels).mapToObj(FleetBench::id).toArray(String[]::new));
        ear = listen();
        for (int i = 0; i < tunnels; i++) {
            Scenario scenario = new RandomWinter(i, 2).withFaults();
            Site site = scenario.site().with(broker.settings(scenario.site().id()));
            Path data = Files.createDirectory(dir.resolve("data-" + i));
            begin(site.id(), () -> services.run(scenario, site, data));
            Thread.sleep(SPREAD_MS);
        }
    }

    /** As {@link RandomWinter} calls them. */
    private static String id(int tunnel) {
        return "made-" + tunnel;
    }

    public static void main(String[] args) throws IOException, InterruptedException {
        int tunnels = Integer.parseInt(args[0]);
        double speed = Double.parseDouble(args[1]);
        int forS = Integer.parseInt(args[2]);
        try (FleetBench fleet = new FleetBench(tunnels, speed)) {
            fleet.measure(tunnels, forS);
        }
        System.exit(0); // the tunnels' threads end with us
    }

    private void measure(int tunnels, int forS) throws IOException, InterruptedException {
        print("%d tunnels, %.0f times as fast as real ones", tunnels, speed);
        awaitReady(tunnels, System.nanoTime());
        long messagesBefore = messages.get();
        long decisionsBefore = services.decisions();
        ProcessLook brokerBefore = ProcessLook.at(broker.pid());
        long most = 0;
        for (int second = 0; second < forS; second++) {
            long before = messages.get();
            Thread.sleep(1000);
            most = Math.max(most, messages.get() - before);
        }
        double simulatedS = forS * speed;
        print("  retained by the broker: %.1f kB", Files.size(dir.resolve("mosquitto.db")) / 1e3);
        ProcessLook here = ProcessLook.at(ProcessHandle.current().pid());
        ProcessLook after = ProcessLook.at(broker.pid());
        print(
                "  of real tunnels the broker would get %.1f messages a second in the mean (here %d at most)",
                (messages.get() - messagesBefore) / simulatedS, most);
        print(
                "  it would take %.2f %% of a core and write %.3f MB a second; it holds %.1f MiB, at most %.1f",
                100 * (after.cpuS() - brokerBefore.cpuS()) / simulatedS,
                (after.writtenBytes() - brokerBefore.writtenBytes()) / 1e6 / simulatedS,
                after.residentMiB(),
                after.mostMiB());
        print(
                "  the tunnels: %.2f MiB and %.1f threads each; %.1f %% of their decisions came; alerts told: %d",
                here.residentMiB() / tunnels,
                (double) here.threads() / tunnels,
                100 * (services.decisions() - decisionsBefore) * 5 / simulatedS / tunnels,
                services.alerts());
        broker.kill();
        Thread.sleep(30_000);
        ready.clear();
        Files.deleteIfExists(dir.resolve("mosquitto.db")); // else it would itself say that all are ready
        broker.start();
        ear = listen(); // mosquitto_sub ends with its broker
        print("  after the broker was killed, away for half a minute, and had forgotten all");
        awaitReady(tunnels, System.nanoTime());
    }

    private void awaitReady(int tunnels, long sinceNs) throws InterruptedException {
        int waitedS = 0;
        for (; ready.size() < tunnels && waitedS < GIVEN_UP_S; waitedS++) {
            Thread.sleep(1000);
        }
        print("  ready: %d after %.0f s", ready.size(), (System.nanoTime() - sinceNs) / 1e9);
    }

    private Process listen() throws IOException {
        Process begun = new ProcessBuilder(broker.client("mosquitto_sub", "-q", "0", "-F", "%t %p", "-t", "homie/5/#"))
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        begin("ear", () -> {
            try (BufferedReader lines = begun.inputReader(UTF_8)) {
                lines.lines().forEach(this::hear);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
        return begun;
    }

    private void hear(String line) {
        messages.incrementAndGet();
        if (line.endsWith("/$state ready")) {
            ready.add(line);
        }
    }

    private static void begin(String name, Runnable run) {
        Thread thread = new Thread(run, name);
        thread.setDaemon(true);
        thread.start();
    }

    private static void print(String format, Object... values) {
        System.out.println(String.format(Locale.ROOT, format, values));
    }

    @Override
    public void close() throws InterruptedException {
        services.end();
        ear.destroyForcibly();
        broker.close();
    }
}
