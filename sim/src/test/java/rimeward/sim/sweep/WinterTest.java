package rimeward.sim.sweep;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.LongStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rimeward.sim.run.Laws;
import rimeward.sim.run.Replay;
import rimeward.sim.run.RunResult;
import rimeward.sim.scenario.BadInput;
import rimeward.sim.scenario.Overrides;
import rimeward.sim.scenario.Scenario;
import rimeward.sim.scenario.ScenarioFile;

/** What a winter is made of, and what becomes of one that fails. */
class WinterTest {
    @TempDir
    private Path folder;

    private WinterRun run;

    @BeforeEach
    void recordedWeather() throws BadInput {
        WeatherMaker weather = new WeatherMaker(RecordedWeather.of(Path.of("..", "config", "weather")));
        run = new WinterRun(new WinterMaker(weather, 2), folder.resolve("scratch"));
    }

    @Test
    void aThousandSeedsMeetEachTroubleAloneAndEachPair() {
        Set<Set<String>> met = new HashSet<>();
        LongStream.rangeClosed(1, 1000).forEach(seed -> met.add(new HashSet<>(Troubles.namesOf(seed))));
        int kinds = Troubles.countOfNames();
        assertThat(met).hasSize(1 + kinds + kinds * (kinds - 1) / 2); // nothing, one, two
    }

    @Test
    void aWinterIsRunAsAReplayOfItsFilesRunsIt() throws BadInput {
        WinterRun.Set winter = run.set(13);
        assertThat(winter.troubles()).isNotEmpty();
        Path file = ScenarioText.write(winter.scenario(), winter.place(), folder);
        Scenario read = ScenarioFile.read(file, Overrides.NONE);
        RunResult one = Replay.run(winter.scenario(), Laws.find("duty"));
        RunResult other = Replay.run(read, Laws.find("duty"));
        assertThat(other.summary()).isEqualTo(one.summary());
        assertThat(other.switches()).isEqualTo(one.switches()).isNotEmpty();
    }

    @Test
    void oneThatFailsIsMadeSmallerAndStillFails() throws BadInput {
        Scenario bare = of("thermostat", run.set(10).scenario()); // a law without a guard leaves gaps
        List<Broken> before = WinterRun.ours(bare).broken();
        assertThat(before).anyMatch(found -> found.code().equals("P2"));
        WinterRun.Set failed = new WinterRun.Set(bare, run.set(10).place(), "made", List.of());
        Path file = new Shrink(failed, "P2", folder.resolve("scratch")).into(folder.resolve("failures"));
        Scenario small = ScenarioFile.read(file, Overrides.NONE);
        assertThat(small.lengthS()).isLessThan(bare.lengthS());
        assertThat(WinterRun.ours(small).broken())
                .anyMatch(found -> found.code().equals("P2"));
    }

    private static Scenario of(String law, Scenario is) {
        return new Scenario(
                is.id(),
                is.title(),
                is.description(),
                is.site(),
                is.tunnel(),
                is.machines(),
                is.machinesByHand(),
                is.sensors(),
                is.doorContact(),
                is.start(),
                is.weather(),
                is.forecast(),
                is.startEpochS(),
                is.lengthS(),
                is.tickS(),
                is.traceEveryS(),
                is.seed(),
                is.offset(),
                is.faults(),
                is.orders(),
                is.rounds(),
                law,
                is.against(),
                is.gates());
    }
}
