package rimeward.core.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static rimeward.core.judgement.Verdict.AT_ODDS;
import static rimeward.core.judgement.Verdict.DISAGREES;
import static rimeward.core.judgement.Verdict.TRUSTED;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import rimeward.site.Place;
import rimeward.site.Sensor;
import rimeward.site.SensorLimits;

/** Sensors with the usual limit: 5 K from the middle. */
class DisagreementTest {
    private static Verdict[] judged(double... readingsC) {
        Sensor[] sensors = IntStream.range(0, readingsC.length)
                .mapToObj(i ->
                        new Sensor("bench-" + i, new Place.Bench("bench " + i), false, 0.2, 3, SensorLimits.defaults()))
                .toArray(Sensor[]::new);
        AirTrack[] tracks = Arrays.stream(readingsC)
                .mapToObj(airC -> AirTrack.START.seen(airC, 0, 5, AirTrack.Beat.of(5)))
                .toArray(AirTrack[]::new);
        Verdict[] verdicts = new Verdict[readingsC.length];
        Arrays.fill(verdicts, TRUSTED);
        new Disagreement(sensors).judge(verdicts, tracks);
        return verdicts;
    }

    @Test
    void aMajorityOutvotesTheOthers() {
        assertThat(judged(6, 6.5, 12)).containsExactly(TRUSTED, TRUSTED, DISAGREES);
        assertThat(judged(2, 12, 2.2, 2.1)).containsExactly(TRUSTED, DISAGREES, TRUSTED, TRUSTED);
        assertThat(judged(-9, 2, 2.2, 2.1, 20)).containsExactly(DISAGREES, TRUSTED, TRUSTED, TRUSTED, DISAGREES);
    }

    @Test
    void twoAgainstTwoAreAllBelievedAsFarAsItIsSafe() {
        assertThat(judged(2, 2.1, 12.2, 12.3)).containsOnly(AT_ODDS);
        assertThat(judged(2, 2.1, 8.9, 9))
                .as("7 K apart, though no more than 5 K from the middle between them")
                .containsOnly(AT_ODDS);
        assertThat(judged(6, 12)).containsOnly(AT_ODDS);
    }

    @Test
    void threeThatAllDifferAreNotLeftToTheMiddleOne() {
        assertThat(judged(0, 6.5, 13)).containsOnly(AT_ODDS);
    }

    @Test
    void withinTheLimitTheyAgree() {
        assertThat(judged(4, 6, 8.9)).containsOnly(TRUSTED);
        assertThat(judged(4, 8.9)).containsOnly(TRUSTED);
        assertThat(judged(4)).containsOnly(TRUSTED);
    }
}
