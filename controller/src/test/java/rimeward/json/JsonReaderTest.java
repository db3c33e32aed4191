package rimeward.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

/** That a short text of a stranger cannot fill the memory or the stack; what else is read, the packages that read JSON try. */
class JsonReaderTest {
    @Test
    void aForecastsWorthOfValuesIsRead() throws NoJson {
        assertThat(JsonReader.read("[" + "{},".repeat(40_000) + "1]")).isInstanceOf(Json.Elements.class);
    }

    @Test
    void moreValuesThanAnybodyNeedsAreRefused() {
        assertThatThrownBy(() -> JsonReader.read("[" + "{},".repeat(60_000) + "1]"))
                .isInstanceOf(NoJson.class)
                .hasMessageContaining("more than 50000 values");
    }

    @Test
    void whatIsNestedTooDeepIsRefused() {
        assertThatThrownBy(() -> JsonReader.read("[".repeat(100_000)))
                .isInstanceOf(NoJson.class)
                .hasMessageContaining("more than 12 deep");
    }

    @Test
    void whatIsQuotedInAMessageMovesNoCursor() {
        assertThat(Excerpt.of("\u001b[2J\n\"°x")).isEqualTo("\"?[2J???x\"");
    }
}
