package rimeward.core.tunnel;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;

class LossWordsTest {
    private static final long TUESDAY_EPOCH_S = 1_386_093_600; // 2013-12-03T18:00Z

    @Test
    void moreNamesTheNightAndWhatToLookFor() {
        assertThat(LossWords.of(new LossChange(TUESDAY_EPOCH_S, 18.2, 9.6, 27.4), ZoneOffset.UTC))
                .startsWith(
                        "Your tunnel loses about 18 % more heat since the night of Tuesday 3 December, by the nights"
                                + " until now (10 to 27 %). Look for a slipped cover, a tear, a gap at the door");
    }

    @Test
    void lessIsGoodNews() {
        assertThat(LossWords.of(new LossChange(TUESDAY_EPOCH_S, -15, -22, -8), ZoneOffset.UTC))
                .startsWith(
                        "Your tunnel loses about 15 % less heat since the night of Tuesday 3 December, by the nights"
                                + " until now (8 to 22 %). Good");
    }
}
