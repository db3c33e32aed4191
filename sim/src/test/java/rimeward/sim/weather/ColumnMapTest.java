package rimeward.sim.weather;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ColumnMapTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    temperature | temp °C | is no weather quantity; use one of air, dew-point, humidity
                    air | temp | must be the column's name and its unit, as in "temp °F"
                    air | temp furlongs | "furlongs" is not a unit here; use one of °C, C, °F, F, K
                    wind | temp °C | "°C" is not a unit here; use one of m/s
                    """)
    void refusesAColumnItCannotUnderstand(String quantity, String column, String message) {
        assertThatThrownBy(() -> ColumnMap.builder().column(quantity, column)).hasMessageContaining(message);
    }

    @Test
    void refusesTheRest() {
        var builder = ColumnMap.builder().column("air", "temp °C");
        assertThatThrownBy(() -> builder.column("air", "other °C")).hasMessage("air has two columns; name one");
        assertThatThrownBy(() -> builder.time("when")).hasMessageContaining("must say columns and format");
        assertThatThrownBy(() -> builder.time("when as QQQQQQQ")).hasMessageContaining("is not understood");
        assertThatThrownBy(() -> builder.zone("Middle Earth")).hasMessageContaining("is no time zone; write UTC");
        assertThatThrownBy(() -> builder.only("EWR")).hasMessageContaining("must be column = value");
        assertThatThrownBy(() -> builder.assume("air", "3 °C")).hasMessageContaining("only wind and cloud can");
        assertThatThrownBy(() -> builder.assume("cloud", "much")).hasMessageContaining("must be a number and a unit");
        assertThatThrownBy(() -> builder.assume("cloud", "9 oktas")).hasMessageContaining("cloud is 1.125, must be 0");
        assertThatThrownBy(() -> builder.longestGapS(0)).hasMessageContaining("longest gap in seconds is 0");
    }
}
