package rimeward.sim.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Random;
import org.junit.jupiter.api.Test;

class FixedTest {
    @Test
    void asManyDecimalsAsAskedForAndNoMinusZero() {
        assertThat(Fixed.of(4.0, 2)).isEqualTo("4.00");
        assertThat(Fixed.of(-0.004, 2)).isEqualTo("0.00");
        assertThat(Fixed.of(-0.05, 1)).isEqualTo("0.0");
        assertThat(Fixed.of(-12.3456, 3)).isEqualTo("-12.346");
        assertThat(Fixed.of(1234567.5, 0)).isEqualTo("1234568");
        assertThat(Fixed.of(0.000_001, 6)).isEqualTo("0.000001");
    }

    @Test
    void agreesWithExactDecimalsButForTies() {
        Random random = new Random(1);
        for (int i = 0; i < 10_000; i++) {
            double value = (random.nextDouble() - 0.5) * 2000;
            BigDecimal exact = new BigDecimal(value).setScale(3, RoundingMode.HALF_EVEN);
            String expected = exact.signum() == 0 ? "0.000" : exact.toPlainString();
            assertThat(Fixed.of(value, 3)).isEqualTo(expected);
        }
    }

    @Test
    void whatIsNoNumberIsRefused() {
        assertThatThrownBy(() -> Fixed.of(Double.NaN, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Fixed.of(Double.POSITIVE_INFINITY, 1)).hasMessageContaining("no number for a file");
    }

    @Test
    void tinySharesKeepTwoDigits() {
        assertThat(Fixed.tiny(4.4512e-14)).isEqualTo("4.5E-14");
        assertThat(Fixed.tiny(0)).isEqualTo("0");
    }
}
