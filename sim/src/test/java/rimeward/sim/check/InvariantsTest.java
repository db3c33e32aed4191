package rimeward.sim.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import rimeward.adapter.config.SiteSettings;
import rimeward.core.decision.Cause;
import rimeward.core.decision.Reason;
import rimeward.core.judgement.Damp;
import rimeward.core.judgement.Inside;
import rimeward.core.judgement.Judgement;
import rimeward.core.judgement.Outside;
import rimeward.core.judgement.Trust;
import rimeward.site.RelaySet;
import rimeward.site.Site;

/** Each property against a few numbers. Hallin Rigg: floor 4 °C, margin 0.5 K, two stages of 1500 W, dryer 550 W, fan 25 W, 3670 W in all. */
class InvariantsTest {
    private static final int STAGE_1 = 0;
    private static final int STAGE_2 = 1;
    private static final int DRYER = 2;
    private static final int FAN = 3;
    private static final RelaySet NONE = RelaySet.none();

    private final Site site = SiteSettings.read(Path.of("..", "config", "tunnel.toml"));
    private final Invariants checks = new Invariants(site);
    private final Facts facts = new Facts();
    private final List<Reason> reasons =
            new ArrayList<>(Collections.nCopies(site.machines().size(), Reason.of(Cause.ASKED)));
    private Judgement believed = believing(8);

    InvariantsTest() {
        facts.epochS = 1000;
        facts.lastsS = 5;
        facts.powered = true;
        facts.coldestC = 8;
        facts.hottestC = 9;
        facts.heaterAble = true;
        facts.dryerAble = true;
        facts.ableW = 3550;
        facts.lossW = 2000;
    }

    private static Judgement believing(double coldestC) {
        return new Judgement(
                Trust.FULL,
                new Inside.Seen(coldestC, coldestC + 1, coldestC + 2, 0, 0),
                new Damp.Seen(70, 2, 0.004),
                Outside.UNSEEN,
                false,
                false,
                List.of(),
                List.of());
    }

    private void ticks(int count) {
        for (int i = 0; i < count; i++) {
            checks.look(facts, reasons, believed);
            facts.epochS += facts.lastsS;
        }
    }

    private void dark(int count) {
        for (int i = 0; i < count; i++) {
            checks.lookInTheDark(facts);
            facts.epochS += facts.lastsS;
        }
    }

    private void command(RelaySet closed, int machine, Cause cause) {
        facts.closed = closed;
        reasons.set(machine, Reason.of(cause));
    }

    private List<Property> broken() {
        return checks.breaches().stream().map(Breach::property).toList();
    }

    @Test
    void aQuietTickBreaksNothing() {
        ticks(100);
        assertThat(checks.breaches()).isEmpty();
        assertThat(checks.gapS()).isZero();
    }

    @Test
    void aGapIsColdWithHeatInHandAndNobodyGivingIt() {
        facts.coldestC = 4.5;
        ticks(3);
        assertThat(checks.gapS()).isEqualTo(15);
        assertThat(checks.breaches()).singleElement().satisfies(breach -> {
            assertThat(breach.property()).isEqualTo(Property.P2_NO_GAP);
            assertThat(breach.firstEpochS()).isEqualTo(1000);
            assertThat(breach.lastedS()).isEqualTo(15);
            assertThat(breach.text()).contains("4.50 °C");
        });
    }

    @Test
    void whoHoldsLeavesNoGapAndNeitherDoesAPowerCut() {
        facts.coldestC = 4.2;
        facts.heaterHolds = true;
        ticks(3);
        facts.heaterHolds = false;
        facts.dryerGives = true;
        ticks(3);
        facts.dryerGives = false;
        facts.powered = false;
        dark(3);
        facts.powered = true;
        facts.heaterAble = false;
        facts.dryerAble = false;
        ticks(3);
        assertThat(checks.gapS()).isZero();
    }

    @Test
    void afterAFaultTheGapCountsButIsJudgedByWhatCouldBeNoticed() {
        facts.coldestC = 4.2;
        facts.machineFaulty = true;
        ticks(12);
        assertThat(checks.gapS()).isEqualTo(60);
        assertThat(broken()).isEmpty();
        ticks(30 * 60 / 5 + 1); // the dryer's next start may be half an hour away
        assertThat(broken()).containsExactly(Property.P6_FAIL_WARM);
    }

    @Test
    void belowTheFloorIsTheLawsFaultOnlyWhileTheMachinesSufficed() {
        facts.heaterHolds = true;
        facts.coldestC = 3.9;
        facts.lossW = 4000;
        ticks(10);
        facts.lossW = 2000; // enough again, but the same excursion
        ticks(10);
        assertThat(broken()).isEmpty();
        facts.coldestC = 6;
        ticks(3 * 3600 / 5 + 1);
        facts.coldestC = 3.9;
        ticks(1);
        assertThat(broken()).containsExactly(Property.P1_FLOOR);
    }

    @Test
    void whileSensorsLieOrTheDoorIsOpenTheFloorIsNotTheLaws() {
        facts.heaterHolds = true;
        facts.coldestC = 3.9;
        facts.sensorsTruthful = false;
        ticks(1);
        facts.coldestC = 8;
        facts.sensorsTruthful = true;
        facts.disturbed = true;
        ticks(1);
        facts.coldestC = 3.9;
        ticks(1);
        assertThat(broken()).isEmpty();
    }

    @Test
    void theCircuitCarriesAllFourMachinesButNoMore() {
        facts.closed = RelaySet.of(0b1111);
        ticks(1);
        assertThat(broken()).isEmpty();
        Invariants small = new Invariants(smallCircuit());
        small.look(facts, reasons, believed);
        assertThat(small.breaches())
                .anyMatch(b -> b.property() == Property.P3_CIRCUIT && b.text().contains("3575 W"));
    }

    @Test
    void aDryersFanThatRunsOnCountsIntoTheLoad() {
        Invariants small = new Invariants(smallCircuit()); // 2934 W: less than both stages and the fan
        facts.closed = NONE.with(STAGE_1).with(FAN);
        small.look(facts, reasons, believed);
        assertThat(small.breaches()).isEmpty();
        facts.closed = NONE.with(STAGE_1).with(STAGE_2);
        facts.dryerRunsOn = true;
        small.look(facts, reasons, believed);
        assertThat(small.breaches())
                .anyMatch(b -> b.property() == Property.P3_CIRCUIT && b.text().contains("3050 W"));
    }

    private Site smallCircuit() {
        return new Site(
                site.id(),
                site.name(),
                site.plants(),
                site.targets(),
                site.tunnel(),
                site.sensors(),
                site.heater(),
                site.drying(),
                site.venting(),
                new rimeward.site.Circuit(230, 16, 0.8, 10, 10),
                site.tariff());
    }

    @Test
    void aHeaterMayRestTooShortForTheFloorOnly() {
        command(NONE.with(STAGE_1), STAGE_1, Cause.ASKED);
        ticks(20);
        command(NONE, STAGE_1, Cause.ASKED);
        ticks(4);
        command(NONE.with(STAGE_1), STAGE_1, Cause.NO_GAP_SOON);
        ticks(20);
        assertThat(broken()).isEmpty();
        command(NONE, STAGE_1, Cause.ASKED);
        ticks(4);
        command(NONE.with(STAGE_1), STAGE_1, Cause.ASKED);
        ticks(1);
        assertThat(broken()).containsExactly(Property.P4_REST);
    }

    @Test
    void aDryersRestIsNeverCutShort() {
        command(NONE.with(DRYER), DRYER, Cause.ASKED);
        ticks(100);
        command(NONE, DRYER, Cause.ASKED);
        ticks(4);
        command(NONE.with(DRYER), DRYER, Cause.HEAT_LOST);
        ticks(1);
        assertThat(broken()).contains(Property.P4_REST);
    }

    @Test
    void aRunIsCutShortOnlyByALimit() {
        command(NONE.with(DRYER), DRYER, Cause.ASKED);
        ticks(4);
        command(NONE, DRYER, Cause.TANK_FULL);
        ticks(100);
        assertThat(broken()).isEmpty();
        command(NONE.with(DRYER), DRYER, Cause.ASKED);
        ticks(4);
        command(NONE, DRYER, Cause.NOT_ASKED);
        ticks(1);
        assertThat(broken()).containsExactly(Property.P4_REST);
    }

    @Test
    void whatRelaysDidWithoutAControllerIsNotHeldAgainstIt() {
        command(NONE.with(DRYER), DRYER, Cause.ASKED);
        ticks(100);
        facts.closed = NONE.with(STAGE_1);
        dark(2);
        command(NONE, STAGE_1, Cause.ASKED);
        ticks(1);
        command(NONE.with(STAGE_1).with(DRYER), STAGE_1, Cause.ASKED);
        ticks(1);
        assertThat(broken()).isEmpty();
    }

    @Test
    void noHeatSourceAboveTheHotLimit() {
        facts.hottestC = 26.6;
        facts.closed = NONE.with(FAN);
        ticks(100);
        assertThat(broken()).isEmpty();
        facts.closed = NONE.with(DRYER);
        ticks(1);
        assertThat(broken()).containsExactly(Property.P5_HOT);
    }

    @Test
    void theThirteenthStartWithinAnHourIsOneTooMany() {
        facts.lastsS = 140;
        for (int start = 1; start <= 13; start++) {
            assertThat(broken()).isEmpty();
            command(NONE.with(STAGE_1), STAGE_1, Cause.ASKED);
            ticks(1);
            command(NONE, STAGE_1, Cause.ASKED);
            ticks(1);
        }
        assertThat(broken()).containsExactly(Property.P7_QUIET);
    }

    @Test
    void aReasonsNumberMustBeTheOneThatWasBelieved() {
        believed = believing(4.4);
        facts.coldestC = 4.6;
        facts.closed = NONE.with(STAGE_1);
        reasons.set(STAGE_1, new Reason(Cause.COLD, 4.4, 4.5));
        ticks(1);
        assertThat(broken()).isEmpty();
        facts.epochS += 3600;
        facts.closed = NONE;
        reasons.set(STAGE_1, new Reason(Cause.WARM_ENOUGH, 5.6, 5.5));
        facts.heaterHolds = true;
        ticks(1);
        assertThat(checks.breaches())
                .anyMatch(b -> b.property() == Property.P8_EXPLAIN && b.text().contains("believed was 4.400"));
    }

    @Test
    void aReasonFarFromTheTruthIsNoneWhileSensorsAreTruthful() {
        believed = believing(14.4);
        facts.coldestC = 8;
        facts.closed = NONE.with(STAGE_1);
        reasons.set(STAGE_1, new Reason(Cause.COLD, 14.4, 14.5));
        ticks(1);
        assertThat(broken()).containsExactly(Property.P8_EXPLAIN);
    }
}
