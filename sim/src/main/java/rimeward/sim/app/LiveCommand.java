package rimeward.sim.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.locks.LockSupport;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rimeward.assembly.Audience;
import rimeward.assembly.Service;
import rimeward.sim.run.LawChoice;
import rimeward.sim.run.Laws;
import rimeward.sim.run.LiveTunnel;
import rimeward.sim.scenario.BadInput;
import rimeward.sim.scenario.Overrides;
import rimeward.sim.scenario.Scenario;
import rimeward.sim.scenario.ScenarioFile;
import rimeward.site.Site;

/** {@code rimeward-sim live}: watch the controller at work on a simulated tunnel. */
@Command(
        name = "live",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Runs the whole service in a simulated tunnel at a pace for people, until the scenario ends or Ctrl-C.",
            "Tells a line each simulated quarter of an hour, and each alert."
        })
final class LiveCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "SCENARIO", description = "scenario file, as config/scenarios/cold-snap.toml")
    private Path file = Path.of("");

    @Option(
            names = "--speed",
            paramLabel = "N",
            description = "simulated seconds in a second, from 1 up (default: ${DEFAULT-VALUE}, a day in a minute)")
    private double speed = 1440;

    @Option(
            names = "--data",
            paramLabel = "DIR",
            description = "where the record is kept; a folder without one (default: a new folder)")
    private @Nullable Path data;

    @Option(
            names = "--broker",
            paramLabel = "HOST:PORT",
            description =
                    "a broker of MQTT that takes its messages unencrypted, or none (default: the settings', or a private one)")
    private @Nullable String broker;

    @Option(
            names = "--page",
            paramLabel = "PORT",
            description = "where its page is served to this machine (default: the settings' port, or any that is free)")
    private @Nullable Integer page;

    private volatile boolean stopped;

    @Override
    public Integer call() throws BadInput, IOException {
        if (!(speed >= 1)) {
            throw new ParameterException(spec.commandLine(), "--speed is " + speed + "; it must be 1 or more.");
        }
        Scenario scenario = ScenarioFile.read(file, Overrides.NONE);
        LawChoice law = Laws.find(scenario.law());
        Path folder = folder();
        PrintWriter out = spec.commandLine().getOut();
        out.println(scenario.title() + ", under the law \"" + scenario.law() + "\". Ctrl-C ends it.");
        CountDownLatch ended = new CountDownLatch(1);
        stopOnSignal(Thread.currentThread(), ended);
        long beganNs = System.nanoTime();
        try (LiveBroker messages = broker(scenario.site(), folder, out)) {
            Site site = scenario.site().with(messages.messaging()).with(LivePage.of(scenario.site(), page));
            LiveTunnel tunnel = new LiveTunnel(scenario, simulatedS -> reach(beganNs, simulatedS));
            Audience audience = new LiveLines(scenario, out::println);
            while (!tunnel.isOver()) { // once, and again after every restart of the controller
                new Service(site, law.law(), folder, tunnel, audience, System::nanoTime).run();
            }
            out.println(stopped ? "Stopped." : "The scenario is over.");
            out.println("Its record: " + folder.resolve(Service.RECORD)
                    + " (java -jar controller/target/rimeward.jar record FILE).");
        } finally {
            out.flush();
            ended.countDown();
        }
        return 0;
    }

    private LiveBroker broker(Site site, Path folder, PrintWriter out) throws IOException {
        try {
            return LiveBroker.of(site, broker, folder, out::println);
        } catch (IllegalArgumentException e) {
            throw new ParameterException(spec.commandLine(), "--broker is " + broker + ": " + e.getMessage() + ".", e);
        }
    }

    private Path folder() throws IOException {
        if (data == null) {
            return Files.createTempDirectory("rimeward-live-");
        }
        if (Files.exists(data.resolve(Service.RECORD))) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--data " + data
                            + " already holds a record, and a scenario always begins anew; name another folder.");
        }
        return Files.createDirectories(data);
    }

    private boolean reach(long beganNs, double simulatedS) {
        long dueNs = beganNs + (long) (simulatedS / speed * 1e9);
        for (long leftNs = dueNs - System.nanoTime(); leftNs > 0 && !stopped; leftNs = dueNs - System.nanoTime()) {
            LockSupport.parkNanos(this, leftNs);
        }
        return !stopped;
    }

    private void stopOnSignal(Thread loop, CountDownLatch ended) {
        Thread stop = new Thread(
                () -> {
                    if (ended.getCount() == 0) {
                        return;
                    }
                    stopped = true;
                    LockSupport.unpark(loop);
                    try {
                        ended.await();
                    } catch (InterruptedException e) {
                        return;
                    }
                    Runtime.getRuntime().halt(0); // a signal's own code would read as a failure
                },
                "stop");
        Runtime.getRuntime().addShutdownHook(stop);
    }
}
