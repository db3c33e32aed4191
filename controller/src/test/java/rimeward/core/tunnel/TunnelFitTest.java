package rimeward.core.tunnel;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import rimeward.fixture.Sites;
import rimeward.site.Site;

/** Against tunnels of two nodes, stepped by the minute and by other code than the model's, whose settings are off by a third. */
class TunnelFitTest {
    private static final double AIR_J_PER_K = 170_000;
    private static final double MASS_J_PER_K = 5.6e6;
    private static final double COUPLING_W_PER_K = 135;
    private static final int STEP_S = 60;
    private static final List<Double> NOTHING = Collections.nCopies(Stretch.MINUTES, 0.0);

    private final Site site = Sites.losing(185);

    /** A fortnight in which a thermostat of 1 K holds 5 °C, and the sun shines some days. */
    private static Stretch fortnight(double lossWPerK, int days, double coldC) {
        Random chance = new Random(4);
        double airC = 6;
        double massC = 7;
        boolean on = false;
        double frontC = 0;
        List<Stretch.Quarter> quarters = new ArrayList<>();
        for (int quarter = 0; quarter < days * 96; quarter++) {
            int ofDay = (quarter + 48) % 96; // from noon
            boolean dark = ofDay < 24 || ofDay >= 72;
            frontC = 0.99 * frontC + 0.3 * chance.nextGaussian();
            double outsideC = coldC + frontC + 3 * StrictMath.cos(2 * StrictMath.PI * (ofDay - 56) / 96);
            int day = (quarter + 48) / 96;
            double sunHeight = StrictMath.max(0, 0.35 * StrictMath.cos(2 * StrictMath.PI * (ofDay - 48) / 96) - 0.1);
            double sunW = 9000 * sunHeight * StrictMath.abs(StrictMath.sin(day));
            List<Double> heatersW = new ArrayList<>();
            for (int s = 0; s < Stretch.QUARTER_S; s += STEP_S) {
                on = airC < 4.7 || (on && airC < 5.7);
                double heatW = on ? 3000 : 0;
                heatersW.add(heatW);
                double toMassW = COUPLING_W_PER_K * (airC - massC);
                airC += (heatW + 0.3 * sunW - toMassW - lossWPerK * (airC - outsideC)) * STEP_S / AIR_J_PER_K;
                massC += (toMassW + 0.7 * sunW) * STEP_S / MASS_J_PER_K;
            }
            double readC = airC + 0.03 * chance.nextGaussian();
            quarters.add(new Stretch.Quarter(readC, outsideC, heatersW, NOTHING, dark, sunHeight, true));
        }
        return new Stretch(0, quarters);
    }

    @Test
    void learnsWhatTheTunnelLosesAndHowWellThatIsKnown() {
        for (double lossWPerK : new double[] {130, 185, 260}) {
            Lesson lesson = TunnelFit.of(site, List.of(fortnight(lossWPerK, 14, -1)));
            Figure found = ((Lesson.Learned) lesson).estimate().heatLossWPerK();
            assertThat(found.value()).isBetween(0.88 * lossWPerK, 1.12 * lossWPerK);
            assertThat(lossWPerK).isBetween(found.least(), found.most());
            assertThat(found.standardError()).isBetween(0.002 * lossWPerK, 0.15 * lossWPerK);
        }
    }

    @Test
    void theSameNightsTeachTheSame() {
        List<Stretch> seen = List.of(fortnight(200, 8, -1));
        Lesson.Learned one = (Lesson.Learned) TunnelFit.of(site, seen);
        Lesson.Learned other = (Lesson.Learned) TunnelFit.of(site, seen);
        assertThat(one.estimate()).isEqualTo(other.estimate());
    }

    @Test
    void saysWhenThereAreTooFewNights() {
        assertThat(TunnelFit.of(site, List.of(fortnight(185, 3, -1))))
                .isEqualTo(new Lesson.TooFew(3, TunnelFit.LEAST_DAYS));
        assertThat(TunnelFit.of(site, List.of())).isEqualTo(new Lesson.TooFew(0, TunnelFit.LEAST_DAYS));
    }

    @Test
    void nightsWithoutHeatDoNotPassForKnowledge() {
        assertThat(TunnelFit.of(site, List.of(fortnight(185, 10, 12))))
                .isEqualTo(new Lesson.Unclear(10, "heat was hardly needed; colder nights will tell"));
    }
}
