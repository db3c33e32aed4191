package rimeward.speed;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import rimeward.adapter.config.SiteSettings;
import rimeward.core.ControlCycle;
import rimeward.core.ControlState;
import rimeward.core.Stepped;
import rimeward.core.decision.DutyLaw;
import rimeward.core.outlook.Outlook;
import rimeward.core.reading.Frame;
import rimeward.core.reading.Reading;
import rimeward.core.reading.Senses;
import rimeward.core.reading.SensorReading;
import rimeward.core.reading.Signal;
import rimeward.core.reading.Tick;
import rimeward.core.reading.WallTime;
import rimeward.site.Site;

/** What one control tick costs, judge to guard, on a cold night's worth of ready-made frames. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(2)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class ControlBench {
    private static final int TICKS = 4096;
    private static final long TICK_MS = 5000;

    private final Site site =
            SiteSettings.read(Path.of(System.getProperty("rimeward.root", ".."), "config/tunnel.toml"));
    private final ControlCycle cycle = new ControlCycle(site, new DutyLaw());
    private final List<Frame> frames = frames();

    @Benchmark
    @OperationsPerInvocation(TICKS)
    public ControlState night() {
        ControlState state = cycle.start();
        for (Frame frame : frames) {
            Stepped stepped = cycle.step(state, frame, Outlook.NONE);
            state = stepped.next();
        }
        return state;
    }

    private List<Frame> frames() {
        SplittableRandom random = new SplittableRandom(1);
        List<Frame> all = new ArrayList<>();
        for (int tick = 0; tick < TICKS; tick++) {
            double airC = 5.5 + 1.2 * StrictMath.sin(tick / 60.0);
            List<SensorReading> sensors = new ArrayList<>();
            for (var sensor : site.sensors()) {
                double noisyC = (sensor.place().isInside() ? airC : -4) + random.nextDouble(-0.05, 0.05);
                Reading rhPercent =
                        sensor.hasHumidity() ? new Reading.Value(80 + random.nextDouble(-1, 1), 2) : Reading.NOT_FITTED;
                sensors.add(new SensorReading(new Reading.Value(noisyC, 2), rhPercent));
            }
            List<Reading> powersW = new ArrayList<>();
            for (var machine : site.machines()) {
                powersW.add(machine.hasPowerFeedback() ? new Reading.Value(0, 1) : Reading.NOT_FITTED);
            }
            all.add(new Frame(
                    new Tick(tick, tick * TICK_MS, new WallTime(tick * TICK_MS, true)),
                    new Senses(sensors, powersW, Signal.OFF, Signal.OFF)));
        }
        return all;
    }
}
