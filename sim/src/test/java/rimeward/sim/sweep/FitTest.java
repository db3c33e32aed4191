package rimeward.sim.sweep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import rimeward.sim.fault.SeededStream;
import rimeward.sim.scenario.BadInput;

/** What is fitted to recorded weather says again what was recorded. */
class FitTest {
    private static final int MANY = 20_000;

    @Test
    void aProcessIsFoundAgain() {
        Ar1 true1 = new Ar1(0, 2, 0.7);
        Ar1 found = Ar1.of(List.of(true1.anomalies(MANY, SeededStream.named(1, "one"))));
        assertThat(found.mean()).isCloseTo(0, within(0.1));
        assertThat(found.spread()).isCloseTo(2, within(0.1));
        assertThat(found.keeps()).isCloseTo(0.7, within(0.03));
    }

    @Test
    void madeDaysVaryAsRecordedOnesDoAboutTheirSnapsMeans() throws BadInput {
        List<double[][]> snaps =
                RecordedWeather.of(Path.of("..", "config", "weather")).snaps();
        double[][] made = new DayFit(snaps).days(MANY, SeededStream.named(2, "days"));
        for (int what = 0; what < 4; what++) {
            assertThat(Math.sqrt(variance(List.<double[][]>of(made), what)))
                    .as("column %d", what)
                    .isCloseTo(Math.sqrt(variance(snaps, what)), within(0.1 * Math.sqrt(variance(snaps, what))));
        }
    }

    /** About each snap's own mean. */
    private static double variance(List<double[][]> snaps, int what) {
        double squares = 0;
        int count = 0;
        for (double[][] rows : snaps) {
            double mean = 0;
            for (double[] row : rows) {
                mean += row[what] / rows.length;
            }
            for (double[] row : rows) {
                squares += (row[what] - mean) * (row[what] - mean);
                count++;
            }
        }
        return squares / count;
    }

    @Test
    void quantilesLieBetweenTheNumbers() {
        Quantiles found = Quantiles.of(new double[] {4, 1, 3, 2});
        assertThat(found.least()).isEqualTo(1);
        assertThat(found.median()).isEqualTo(2.5);
        assertThat(found.q25()).isEqualTo(1.75);
        assertThat(found.most()).isEqualTo(4);
        assertThat(found.mean()).isEqualTo(2.5);
    }
}
