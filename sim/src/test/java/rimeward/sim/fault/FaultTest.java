package rimeward.sim.fault;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class FaultTest {

    @Test
    void everyKindHasALabelThatLeadsBackToIt() {
        for (FaultKind kind : FaultKind.values()) {
            assertThat(kind.label()).matches("[a-z]+(-[a-z]+)*");
            assertThat(FaultKind.ofLabel(kind.label())).isEqualTo(kind);
        }
    }

    @Test
    void anUnknownLabelIsAnsweredWithTheKnownOnes() {
        assertThatThrownBy(() -> FaultKind.ofLabel("gremlins"))
                .hasMessageContaining("gremlins")
                .hasMessageContaining("heater-fuse");
    }

    @Test
    void impossibleFaultsAreRefusedByName() {
        assertThatThrownBy(() -> Fault.of(0, FaultKind.SENSOR_LOST, 10))
                .hasMessageContaining("sensor-lost needs a target");
        assertThatThrownBy(() -> Fault.of(0, FaultKind.DOOR_OPEN, "door", 10)).hasMessageContaining("takes no target");
        assertThatThrownBy(() -> Fault.of(-1, FaultKind.DOOR_OPEN, 10)).hasMessageContaining("-1.0 s");
        assertThatThrownBy(() -> Fault.of(0, FaultKind.DOOR_OPEN, 0)).hasMessageContaining("longer than 0 s");
        assertThatThrownBy(() -> Fault.of(0, FaultKind.CONTROLLER_RESTART, 5)).hasMessageContaining("must be 0 s");
        assertThatThrownBy(() -> new Fault(0, FaultKind.COVER_TORN, "", 9, -1)).hasMessageContaining("-1.0 m2");
    }

    @Test
    void aPlanIsInOrderOfTime() {
        FaultPlan plan = FaultPlan.of(Fault.of(9, FaultKind.DOOR_OPEN, 1), Fault.of(3, FaultKind.DOOR_OPEN, 1));
        assertThat(plan.faults()).extracting(Fault::atS).containsExactly(3.0, 9.0);
    }

    private static final RandomFaults MIXED = new RandomFaults(
            Arrays.asList(FaultKind.values()), List.of("north", "south"), List.of("stage-1"), 4, 60, 7200);

    @Test
    void theSameSeedGivesTheSamePlan() {
        assertThat(MIXED.plan(42, 864_000)).isEqualTo(MIXED.plan(42, 864_000));
        assertThat(MIXED.plan(42, 864_000)).isNotEqualTo(MIXED.plan(43, 864_000));
    }

    @Test
    void chanceMeetsItsRateAndEveryKind() {
        FaultPlan plan = MIXED.plan(1, 100 * 86_400.0);
        assertThat(plan.faults()).hasSizeBetween(400, 401);
        assertThat(plan.faults()).extracting(Fault::kind).contains(FaultKind.values());
        assertThat(plan.faults()).allMatch(fault -> fault.kind().isMomentary() || fault.lastsS() <= 7200);
    }

    @Test
    void streamsAreEvenAndIndependentOfOneAnother() {
        SeededStream one = SeededStream.named(5, "one");
        SeededStream other = SeededStream.named(5, "other");
        double sum = 0;
        double squares = 0;
        double product = 0;
        int n = 100_000;
        for (int i = 0; i < n; i++) {
            double x = one.bell();
            sum += x;
            squares += x * x;
            product += x * other.bell();
        }
        assertThat(sum / n).isBetween(-0.02, 0.02);
        assertThat(squares / n).isBetween(0.98, 1.02);
        assertThat(product / n).isBetween(-0.02, 0.02);
    }

    @Test
    void aStreamIsToldBySeedAndName() {
        SeededStream stream = SeededStream.named(0, "");
        long first = stream.nextLong();
        assertThat(SeededStream.named(0, "").nextLong()).isEqualTo(first);
        assertThat(SeededStream.named(0, "a").nextLong()).isNotEqualTo(first);
    }
}
