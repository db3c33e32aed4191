package rimeward.core.tunnel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class GreyBoxTest {
    private static final GreyBox.Numbers DECAYING =
            new GreyBox.Numbers(100, 0, 150, 2e5, 5e6, 0, 0, 1, 0.7, 8000, 6000, 40, 0.1, 0.05);

    private static List<Double> each(double powerW) {
        return Collections.nCopies(Stretch.MINUTES, powerW);
    }

    private static Stretch steady(int quarters, double outsideC, double heaterW) {
        Stretch.Quarter one = new Stretch.Quarter(10, outsideC, each(heaterW), each(0), true, 0, true);
        return new Stretch(0, Collections.nCopies(quarters + 1, one));
    }

    /** Two nodes, analytic: C 0.2 and 5 MJ/K, 150 W/K between and 100 W/K to 0 °C outside, both from 10 °C. */
    @Test
    void decaysAsTheAnalyticSolution() {
        GreyBox box = new GreyBox(DECAYING);
        assertThat(box.lowestAirC(steady(4, 0, 0), 1)).isCloseTo(5.8999, within(1e-3));
        assertThat(box.lowestAirC(steady(48, 0, 0), 1)).isCloseTo(3.6681, within(1e-3));
    }

    @Test
    void heatThatEqualsTheLossHoldsTheAir() {
        assertThat(new GreyBox(DECAYING).lowestAirC(steady(48, 2, 800), 1)).isCloseTo(10, within(1e-9));
    }

    @Test
    void byDayTheSunIsLeftInTheMassAndWarmsTheNight() {
        GreyBox box = new GreyBox(DECAYING);
        Stretch.Quarter sunny = new Stretch.Quarter(14, 0, each(0), each(0), false, 0.2, true);
        Stretch.Quarter cloudy = new Stretch.Quarter(10, 0, each(0), each(0), false, 0.2, true);
        Stretch.Quarter night = new Stretch.Quarter(10, 0, each(0), each(0), true, 0, true);
        assertThat(box.lowestAirC(day(sunny, night), 25)).isGreaterThan(box.lowestAirC(day(cloudy, night), 25) + 1);
    }

    private static Stretch day(Stretch.Quarter light, Stretch.Quarter dark) {
        List<Stretch.Quarter> all = new ArrayList<>(Collections.nCopies(25, light));
        all.addAll(Collections.nCopies(12, dark));
        return new Stretch(0, all);
    }

    @Test
    void whatTheModelMakesSurprisesItLessThanAnythingElse() {
        double[] right = new double[1];
        double[] wrong = new double[1];
        Stretch held = steady(48, 2, 800);
        new GreyBox(DECAYING).surprise(held, right, 0, null);
        new GreyBox(new GreyBox.Numbers(140, 0, 150, 2e5, 5e6, 0, 0, 1, 0.7, 8000, 6000, 40, 0.1, 0.05))
                .surprise(held, wrong, 0, null);
        assertThat(right[0]).isLessThan(wrong[0] - 10);
    }
}
