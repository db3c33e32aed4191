package rimeward.sim.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.DateTimeException;
import java.time.ZoneId;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TimeColumnsTest {
    private static String utc(TimeColumns columns, String text) {
        return TimeColumns.utc(columns.epochS(text, Long.MIN_VALUE));
    }

    @ParameterizedTest
    @CsvSource({
        "2013-01-01T06:00:00Z, 2013-01-01T06:00:00Z",
        "2013-01-01T06:00Z, 2013-01-01T06:00:00Z",
        "2013-01-01 06:00, 2013-01-01T05:00:00Z",
        "2013-01-01T06:00+02:00, 2013-01-01T04:00:00Z",
        "2013-01-01 06:00:30.250+02, 2013-01-01T04:00:30Z",
        "2013-01-01, 2012-12-31T23:00:00Z"
    })
    void readsIsoWithAndWithoutOffset(String text, String expected) {
        assertThat(utc(TimeColumns.parse("time as iso", ZoneOffset.ofHours(1)), text))
                .isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource({
        "yyyyMMddHH, 2013010106, 2013-01-01T06:00:00Z",
        "d/M/y H:mm, 1/2/2013 6:30, 2013-02-01T06:30:00Z",
        "y M d H, 2013 1 1 24, 2013-01-02T00:00:00Z"
    })
    void readsPatterns(String pattern, String text, String expected) {
        assertThat(utc(TimeColumns.parse("any as " + pattern, ZoneOffset.UTC), text))
                .isEqualTo(expected);
    }

    @Test
    void tellsTheHourThatHappensTwiceApart() {
        var newYork = TimeColumns.parse("time as iso", ZoneId.of("America/New_York"));
        long first = newYork.epochS("2013-11-03 01:00", Long.MIN_VALUE);
        long second = newYork.epochS("2013-11-03 01:00", first);
        assertThat(TimeColumns.utc(first)).isEqualTo("2013-11-03T05:00:00Z");
        assertThat(TimeColumns.utc(second)).isEqualTo("2013-11-03T06:00:00Z");
    }

    @Test
    void refusesAnHourThatNeverWas() {
        var newYork = TimeColumns.parse("time as iso", ZoneId.of("America/New_York"));
        assertThatThrownBy(() -> newYork.epochS("2013-03-10 02:30", Long.MIN_VALUE))
                .isInstanceOf(DateTimeException.class)
                .hasMessageContaining("the clocks of America/New_York skipped it");
    }
}
