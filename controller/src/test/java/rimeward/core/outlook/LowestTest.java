package rimeward.core.outlook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class LowestTest {
    private static final Course.Basis BASIS = new Course.Basis.Forecasted("test", 0, 0);
    private static final double MEMORY_S = BASIS.errorMemoryS();
    private static final int TRIES = 20_000;

    /** A night that cools by 6 K over 14 hours and warms again, its spread growing. */
    private static Course night(double spreadK) {
        List<Course.Step> steps = new ArrayList<>();
        for (int quarter = 0; quarter <= 72; quarter++) {
            double hour = quarter / 4.0;
            double airC = hour <= 14 ? 2 - 6 * Math.sqrt(hour / 14) : -4 + (hour - 14);
            steps.add(new Course.Step(quarter * 900L, airC, spreadK * Math.min(1, 0.3 + hour / 10), -5));
        }
        return new Course(BASIS, steps);
    }

    /** The same by drawing many courses whose errors are as alike as is assumed. */
    private static double[] drawn(Course course) {
        Random random = new Random(1);
        double keep = Math.exp(-900 / MEMORY_S);
        double sum = 0;
        double squares = 0;
        for (int i = 0; i < TRIES; i++) {
            double error = random.nextGaussian();
            double lowestC = Double.POSITIVE_INFINITY;
            for (Course.Step step : course.steps()) {
                lowestC = Math.min(lowestC, step.airC() + step.spreadK() * error);
                error = keep * error + Math.sqrt(1 - keep * keep) * random.nextGaussian();
            }
            sum += lowestC;
            squares += lowestC * lowestC;
        }
        double mean = sum / TRIES;
        return new double[] {mean, Math.sqrt(squares / TRIES - mean * mean)};
    }

    @Test
    void theLowestOfACourseIsWhatManyDrawnCoursesGive() {
        for (double spreadK : new double[] {0.5, 1, 2, 3}) {
            Course course = night(spreadK);
            double[] drawn = drawn(course);
            Lowest lowest = course.lowest();
            assertThat(lowest.airC()).as("spread %.1f", spreadK).isCloseTo(drawn[0], within(0.12 * spreadK + 0.02));
            assertThat(lowest.spreadK()).as("spread %.1f", spreadK).isCloseTo(drawn[1], within(0.1 * spreadK));
            assertThat(lowest.epochS()).isEqualTo(14 * 3600);
        }
    }

    @Test
    void whereTheLowestItselfWasPredictedItIsNotLoweredAgain() {
        Lowest lowest = new Course(new Course.Basis.Local(12), night(1).steps()).lowest();
        assertThat(lowest.airC()).isCloseTo(-4, within(0.15));
        assertThat(lowest.spreadK()).isCloseTo(1, within(0.1));
    }

    @Test
    void whereAllIsSureItIsTheLowestStep() {
        Lowest lowest = night(0).lowest();
        assertThat(lowest.airC()).isCloseTo(-4, within(1e-6));
        assertThat(lowest.spreadK()).isCloseTo(0, within(1e-3));
    }

    @Test
    void onlyTheTimeAskedForCounts() {
        assertThat(night(0).lowest(0, 3600).epochS()).isEqualTo(3600);
        assertThatIllegalArgumentException().isThrownBy(() -> night(1).lowest(1_000_000, 2_000_000));
    }

    @Test
    void theNormalDistributionIsThatOfTheTables() {
        assertThat(Normal.below(0)).isCloseTo(0.5, within(1e-7));
        assertThat(Normal.below(1)).isCloseTo(0.841344746, within(1e-7));
        assertThat(Normal.below(1.959964)).isCloseTo(0.975, within(1e-7));
        assertThat(Normal.below(-3)).isCloseTo(0.001349898, within(1e-7));
    }
}
