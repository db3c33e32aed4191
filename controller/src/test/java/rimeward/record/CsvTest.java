package rimeward.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class CsvTest {
    @Test
    void everyKindOfCellComesBack() {
        List<Object> cells = Arrays.asList(
                null,
                "",
                "a \"quoted\", comma",
                "two\nlines\r, back\\nslash",
                7L,
                -0.1,
                1.0E-7,
                "7",
                Long.MIN_VALUE,
                null);
        String line = Csv.line(cells);
        assertThat(line).endsWith("\n").doesNotContain("\r");
        assertThat(line.lines()).hasSize(1);
        assertThat(Csv.parse(line.strip())).isEqualTo(cells);
    }

    @Test
    void whatIsNoRowIsRefused() {
        assertThatThrownBy(() -> Csv.parse("1,\"open")).hasMessage("a quote is opened and not closed");
        assertThatThrownBy(() -> Csv.parse("1,word")).hasMessageContaining("\"word\" is no number");
        assertThatThrownBy(() -> Csv.parse("\"a\"b,1")).hasMessageContaining("behind its closing quote");
    }
}
