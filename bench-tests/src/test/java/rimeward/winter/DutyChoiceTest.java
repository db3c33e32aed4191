package rimeward.winter;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rimeward.sim.run.Laws;
import rimeward.sim.run.Replay;
import rimeward.sim.run.Summary;
import rimeward.sim.scenario.BadInput;
import rimeward.sim.scenario.Overrides;
import rimeward.sim.scenario.Scenario;
import rimeward.sim.scenario.ScenarioFile;

/**
 * Weighing who holds the warm duty takes no more electricity than either fixed choice, at no floor's expense. A law that dries less is no
 * cheaper one: against the heater that always warms, the dryness is to be the same. Against the dryer that always warms it need not be,
 * because that one dries deeper than it is asked to.
 */
@Tag("slow")
final class DutyChoiceTest {
    /** The same dryness: a replay ends amid a cycle, so one shortest run of the demo's dryer may fall before its end or after, s. */
    private static final double SAME_S = 900;

    private static Stream<Path> shipped() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("..", "config", "scenarios"))) {
            return files.sorted().toList().stream();
        }
    }

    @ParameterizedTest
    @MethodSource("shipped")
    void inEveryShippedScenarioItTakesNoMoreThanEitherFixedChoice(Path file) throws Exception {
        Scenario scenario = ScenarioFile.read(file, Overrides.NONE);
        Summary ours = run(scenario, "duty");
        Summary heater = run(scenario, "heater-warms");
        for (Summary fixed : List.of(heater, run(scenario, "dryer-warms"))) {
            assertThat(ours.totalKWh()).isLessThanOrEqualTo(fixed.totalKWh());
            assertThat(ours.belowFloorS())
                    .as("the floor breaks only where it must")
                    .isLessThanOrEqualTo(fixed.belowFloorS());
            assertThat(ours.gapS()).isLessThanOrEqualTo(fixed.gapS());
        }
        assertThat((double) ours.aboveRhTargetS()).isLessThanOrEqualTo(heater.aboveRhTargetS() + SAME_S);
        assertThat((double) ours.benchAtDewS()).isLessThanOrEqualTo(heater.benchAtDewS() + SAME_S);
    }

    /**
     * The dryer whenever it may takes about as much there and dries deeper (0.08 % less, measured; in single winters up to half a kilowatt-hour
     * more or less). What is held to is that weighing is near the better of the two.
     */
    @Test
    void inMildWintersNobodyThoughtOfItTakesLessThanTheHeaterAndNoMoreThanTheDryerWould() throws Exception {
        double oursKWh = 0;
        double heaterKWh = 0;
        double dryerKWh = 0;
        for (long seed : LongStream.rangeClosed(1, 20).toArray()) {
            Scenario scenario = new RandomWinter(seed, 4).mild();
            Summary ours = run(scenario, "duty");
            assertThat(ours.belowFloorS()).as("seed %d", seed).isZero();
            oursKWh += ours.totalKWh();
            heaterKWh += run(scenario, "heater-warms").totalKWh();
            dryerKWh += run(scenario, "dryer-warms").totalKWh();
        }
        assertThat(oursKWh).isLessThan(heaterKWh).isLessThan(1.002 * dryerKWh);
    }

    private static Summary run(Scenario scenario, String law) throws BadInput {
        return Replay.run(scenario, Laws.find(law)).summary();
    }
}
