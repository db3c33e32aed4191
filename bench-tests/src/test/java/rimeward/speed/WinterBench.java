package rimeward.speed;

import java.nio.file.Path;
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
import rimeward.sim.run.LawChoice;
import rimeward.sim.run.Laws;
import rimeward.sim.run.Replay;
import rimeward.sim.run.RunResult;
import rimeward.sim.scenario.BadInput;
import rimeward.sim.scenario.Overrides;
import rimeward.sim.scenario.Scenario;
import rimeward.sim.scenario.ScenarioFile;

/**
 * What a tick of a replay costs with everything on: physics, devices, control, checks against the truth, trace. A winter is
 * 180 days of ticks of 5 s; its whole time is this times {@link #TICKS}.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Fork(value = 1, jvmArgsAppend = "-XX:+UseSerialGC")
@Warmup(iterations = 2)
@Measurement(iterations = 5)
public class WinterBench {
    private static final int TICKS = 180 * 86_400 / 5;
    private static final Path FILE = Path.of("src/test/resources/rimeward/speed/winter.toml");

    private final Scenario scenario;
    private final LawChoice law;

    public WinterBench() {
        try {
            Path here = FILE.toFile().exists() ? FILE : Path.of("bench-tests").resolve(FILE);
            scenario = ScenarioFile.read(here, Overrides.NONE);
            law = Laws.find("duty");
        } catch (BadInput e) {
            throw new IllegalStateException(e);
        }
    }

    @Benchmark
    @OperationsPerInvocation(TICKS)
    public RunResult tick() {
        return Replay.run(scenario, law);
    }
}
