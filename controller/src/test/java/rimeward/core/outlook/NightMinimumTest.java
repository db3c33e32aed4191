package rimeward.core.outlook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;

class NightMinimumTest {
    private static final double NOISE_K = 1;

    private static OutsideAir.Seen evening(double airC, double dewPointC) {
        return new OutsideAir.Seen(0, airC, OptionalDouble.of(dewPointC));
    }

    private static OutsideAir.Seen evening(double airC) {
        return new OutsideAir.Seen(0, airC, OptionalDouble.empty());
    }

    private static double lowestC(OutsideAir.Seen evening, Random random) {
        double dewC = evening.dewPointC().orElse(0);
        return 0.6 * evening.airC() + 0.3 * dewC - 3 + NOISE_K * random.nextGaussian();
    }

    private static OutsideAir.Seen someEvening(Random random) {
        double airC = 3 + 3 * random.nextGaussian();
        return evening(airC, airC - 1 - 4 * random.nextDouble());
    }

    private static List<KnownNight> nights(int count, Random random) {
        List<KnownNight> nights = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            OutsideAir.Seen evening = someEvening(random);
            nights.add(new KnownNight(evening, lowestC(evening, random), 20));
        }
        return nights;
    }

    @Test
    void withFewerThanTenEveningsNothingIsPredicted() {
        List<KnownNight> nights = new ArrayList<>(nights(9, new Random(1)));
        nights.add(new KnownNight(OutsideAir.UNSEEN, -3, 5));
        assertThat(NightMinimum.after(evening(3, 1), nights)).isEmpty();
        nights.addAll(nights(1, new Random(2)));
        assertThat(NightMinimum.after(evening(3, 1), nights)).isPresent();
    }

    @Test
    void manyNightsGiveTheLawAndItsSpread() {
        NightMinimum lowest =
                NightMinimum.after(evening(3, 0), nights(2000, new Random(3))).orElseThrow();
        assertThat(lowest.airC()).isCloseTo(0.6 * 3 - 3, within(0.15));
        assertThat(lowest.spreadK()).isCloseTo(NOISE_K, within(0.1));
    }

    @Test
    void theSpreadCoversWhatComesHoweverFewNightsThereAre() {
        Random random = new Random(4);
        for (int known : new int[] {10, 15, 40}) {
            int within2 = 0;
            double squares = 0;
            for (int i = 0; i < 4000; i++) {
                OutsideAir.Seen evening = someEvening(random);
                NightMinimum lowest =
                        NightMinimum.after(evening, nights(known, random)).orElseThrow();
                double off = (lowestC(evening, random) - lowest.airC()) / lowest.spreadK();
                squares += off * off / 4000;
                within2 += Math.abs(off) < 1.96 ? 1 : 0;
            }
            assertThat(within2 / 4000.0).as("%d nights", known).isBetween(0.93, 0.97);
            assertThat(squares).as("%d nights", known).isBetween(0.8, 1.2);
        }
    }

    @Test
    void anEveningUnlikeAnySeenIsLessCertain() {
        List<KnownNight> nights = nights(15, new Random(5));
        double usualK = NightMinimum.after(evening(3, 1), nights).orElseThrow().spreadK();
        assertThat(NightMinimum.after(evening(-12, -14), nights).orElseThrow().spreadK())
                .isGreaterThan(1.5 * usualK);
    }

    @Test
    void withoutADewPointTheAirAloneIsAsked() {
        List<KnownNight> nights = nights(40, new Random(6));
        NightMinimum dry = NightMinimum.after(evening(3), nights).orElseThrow();
        assertThat(dry.nights()).isEqualTo(40);
        assertThat(dry.airC()).isBetween(-3.0, 1.0);
    }

    @Test
    void eveningsAllAlikePredictTheirMean() {
        List<KnownNight> nights = new ArrayList<>();
        for (int i = 0; i < 10; i++) {
            nights.add(new KnownNight(evening(2, 1), i % 2, 5));
        }
        assertThat(NightMinimum.after(evening(2, 1), nights).orElseThrow().airC())
                .isCloseTo(0.5, within(1e-9));
    }
}
