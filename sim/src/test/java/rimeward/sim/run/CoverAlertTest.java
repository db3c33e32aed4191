package rimeward.sim.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rimeward.alert.AlertKind;
import rimeward.sim.scenario.Overrides;
import rimeward.sim.scenario.ScenarioFile;
import rimeward.sim.scenario.SmallNight;

/** A torn cover is told of in time, and none where there is none: whatever else goes wrong in the shipped scenarios. */
class CoverAlertTest {
    private static final Path SCENARIOS = SmallNight.CONFIG.resolve("scenarios");
    private static final Path TORN = SCENARIOS.resolve("cover-torn.toml");

    static List<Path> others() throws IOException {
        try (Stream<Path> files = Files.list(SCENARIOS)) {
            return files.filter(file -> !file.equals(TORN)).sorted().toList();
        }
    }

    private static List<AlertKind> raised(Path file) throws Exception {
        return Replay.run(ScenarioFile.read(file, Overrides.NONE), Laws.find("duty")).alerts().stream()
                .filter(AlertEvent::raised)
                .map(AlertEvent::kind)
                .toList();
    }

    @Test
    void aTornCoverIsToldOfBeforeThePlantsAreCold() throws Exception {
        assertThat(raised(TORN)).containsExactly(AlertKind.EXTRA_LOSS, AlertKind.FLOOR_CROSSED);
    }

    @ParameterizedTest
    @MethodSource("others")
    void nothingElseIsTakenForOne(Path file) throws Exception {
        assertThat(raised(file)).doesNotContain(AlertKind.EXTRA_LOSS);
    }
}
