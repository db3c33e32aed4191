package rimeward.sizing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import rimeward.site.Circuit;

class HeaterPlanTest {
    private static final Circuit PLUG = new Circuit(230, 13, 0.8, 0, 0);
    private static final Circuit TWENTY = new Circuit(230, 20, 0.8, 10, 0);

    @Test
    void theFewestStagesThatGiveIt() {
        assertThat(HeaterPlan.of(3400, TWENTY).fitting()).isEqualTo(new Stages.Some(List.of(2000.0, 1500.0)));
        assertThat(HeaterPlan.of(2900, TWENTY).fitting()).isEqualTo(new Stages.Some(List.of(1500.0, 1500.0)));
    }

    @Test
    void neverOnlyOneAndNoneLargerThanAPlugBears() {
        assertThat(HeaterPlan.of(10, PLUG).fitting()).isEqualTo(new Stages.Some(List.of(500.0, 500.0)));
        Circuit strong = new Circuit(230, 63, 0.8, 0, 0);
        assertThat(HeaterPlan.of(9000, strong).fitting())
                .isEqualTo(new Stages.Some(List.of(2000.0, 2000.0, 2000.0, 2000.0, 2000.0)));
    }

    @Test
    void whatACircuitCannotCarry() {
        HeaterPlan plan = HeaterPlan.of(4400, TWENTY);
        assertThat(plan.fits()).isFalse();
        assertThat(plan.wanted().totalW()).isEqualTo(4500);
        assertThat(plan.most()).isEqualTo(new Stages.Some(List.of(2000.0, 1500.0)));
        assertThat(plan.breakerA()).hasValue(25); // 25 × 230 × 0.8 = 4600 W, 20 A only 3680 W
    }

    @Test
    void whatNoPlugsCanGive() {
        HeaterPlan plan = HeaterPlan.of(16_001, PLUG);
        assertThat(plan.wanted()).isEqualTo(new Stages.None());
        assertThat(plan.breakerA()).isEmpty();
    }

    @Test
    void nothingFitsWhereTwoSmallOnesAreTooMuch() {
        assertThat(HeaterPlan.of(300, new Circuit(230, 5, 0.8, 0, 0)).most()).isEqualTo(new Stages.None());
    }
}
