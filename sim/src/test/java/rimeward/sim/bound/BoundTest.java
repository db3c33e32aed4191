package rimeward.sim.bound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import rimeward.sim.report.SummaryJson;
import rimeward.sim.run.Comparison;
import rimeward.sim.run.Laws;
import rimeward.sim.run.Least;
import rimeward.sim.run.Replay;
import rimeward.sim.run.RunResult;
import rimeward.sim.scenario.BadInput;
import rimeward.sim.scenario.Gates;
import rimeward.sim.scenario.Overrides;
import rimeward.sim.scenario.Scenario;
import rimeward.sim.scenario.ScenarioFile;
import rimeward.sim.scenario.SmallNight;

/** One recorded night down to −9.9 °C, from noon to noon. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class BoundTest {
    /** What whole quarters of the real dryer take more than shares of an ideal one: 2 to 6 % was measured. */
    private static final double WHOLE_QUARTERS = 1.08;

    private Scenario night;
    private RunResult ours;
    private Least least;

    @BeforeAll
    void look(@TempDir Path folder) throws Exception {
        night = night(folder, "");
        ours = Replay.run(night, Laws.find("duty"));
        least = Bound.of(night, ours);
    }

    private static Scenario night(Path folder, String more) throws Exception {
        return ScenarioFile.read(
                Files.writeString(folder.resolve("night.toml"), SmallNight.TEXT + more), Overrides.NONE);
    }

    @Test
    void noLawThatHoldsTheFloorComesBelowIt() throws Exception {
        for (String law : List.of("duty", "heater-warms", "dryer-warms")) {
            RunResult result = Replay.run(night, Laws.find(law));
            assertThat(result.summary().belowFloorS()).isZero();
            assertThat(result.summary().totalKWh()).isGreaterThan(least.kWh());
            assertThat(result.summary().cost()).isGreaterThan(least.cost());
        }
    }

    @Test
    void playedIntoTheSimulatorItHoldsTheFloorAndTakesLittleMore() {
        assertThat(least.playedShortK()).isLessThan(0.1);
        assertThat(least.playedKWh()).isBetween(least.kWh() * 0.995, least.kWh() * WHOLE_QUARTERS);
        assertThat(least.playedCost()).isBetween(least.cost() * 0.995, least.cost() * WHOLE_QUARTERS);
    }

    @Test
    void theLawsOwnScheduleAnsweredByTheQuarterIsWhatItsRunWas() {
        Course course = new Course(night);
        Kept kept = KeptReader.read(night, ours.trace(), course.quarters);
        rimeward.sim.bound.Path again = rimeward.sim.bound.Path.of(new Probe(night, course), kept.schedule());
        assertThat(again.kWh()).isCloseTo(ours.summary().totalKWh(), within(0.01 * again.kWh()));
        for (int k = 0; k < course.quarters; k++) {
            assertThat(again.quarters()[k].endC()).isCloseTo(kept.endC()[k], within(0.8)); // a cycle is a kelvin high
        }
    }

    @Test
    void eachThingThatALawMustReckonWithCosts() {
        List<Least.Step> steps = least.steps();
        assertThat(least.held()).isEmpty();
        assertThat(steps.get(0).kWh()).isEqualTo(least.kWh());
        for (int i = 1; i < steps.size(); i++) {
            assertThat(steps.get(i).kWh()).isGreaterThan(steps.get(i - 1).kWh());
        }
        assertThat(steps.get(steps.size() - 1).kWh()).isEqualTo(ours.summary().totalKWh());
    }

    @Test
    void theSummaryTellsOfItOnlyWhenAsked() {
        Comparison plain = Replay.comparison(night, List.of(ours), Gates.NONE);
        assertThat(SummaryJson.of(plain)).doesNotContain("least\"");
        assertThat(SummaryJson.of(plain.with(least))).contains("\"least\": {", "\"ratios\": [");
    }

    @Test
    void whereTheMachinesAreDeadItIsHeldToBeNoColderThanTheLaw(@TempDir Path folder) throws Exception {
        Scenario cut = night(folder, "[[fault]]\nat = \"02:00\"\nkind = \"power-cut\"\nlasts = \"1h\"\n");
        RunResult law = Replay.run(cut, Laws.find("duty"));
        Least found = Bound.of(cut, law);
        assertThat(law.summary().belowFloorS()).isPositive();
        assertThat(found.belowH()).isBetween(law.summary().belowFloorS() / 3600.0, 2.0);
        assertThat(found.kWh()).isLessThan(law.summary().totalKWh());
        assertThat(found.held()).hasValueSatisfying(held -> {
            assertThat(held.kWh()).isGreaterThan(found.kWh()); // it is warmed up before the cut
            assertThat(held.deepestK()).isLessThan(4 - law.summary().lowestBenchC());
        });
    }

    @Test
    void aTraceTooCoarseIsRefused(@TempDir Path folder) throws Exception {
        String text = SmallNight.TEXT.replace("length =", "trace_every_s = 900\nlength =");
        Scenario coarse = ScenarioFile.read(Files.writeString(folder.resolve("coarse.toml"), text), Overrides.NONE);
        RunResult law = Replay.run(coarse, Laws.find("always-on"));
        assertThatThrownBy(() -> Bound.of(coarse, law))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("set trace_every_s to 300 or less");
    }
}
