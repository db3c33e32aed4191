package rimeward.core.tunnel;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import rimeward.air.MoistAir;
import rimeward.air.Saturation;
import rimeward.fixture.Sites;
import rimeward.site.Site;

/** Against a tunnel whose damp is stepped by other code than the fit's, by the minute. */
class MoistureFitTest {
    private static final int DAY_QUARTERS = 96;
    private static final long NOON_EPOCH_S = 1_385_899_200; // 2013-12-01T12:00Z

    private final Site site = Sites.metered();
    private final TunnelEstimate assumed = TunnelEstimate.assumed(site);
    private final double pressurePa = MoistAir.pressurePa(site.tunnel().altitudeM());

    private double saturatedKgPerKg(double atC) {
        return MoistAir.humidityRatioKgPerKg(Saturation.overWaterPa(atC), pressurePa);
    }

    /** Exchange and wetting are what is assumed times these; the dryer, where it runs, runs an hour of three. */
    private List<DampQuarter> days(int count, double exchangeFactor, double wettingFactor, boolean dries) {
        Random chance = new Random(8);
        double exchange = assumed.airExchangeKgPerS().value() * exchangeFactor;
        double wetting = assumed.wettingKgPerS().value() * wettingFactor;
        double ratedKgPerS = 0.5 / 3600 / (0.8 * saturatedKgPerKg(10));
        double airKg = site.tunnel().volumeM3() * 1.22;
        double humidity = 0.004;
        List<DampQuarter> all = new ArrayList<>();
        for (int i = 0; i < count * DAY_QUARTERS; i++) {
            double airC = 6 + 2 * StrictMath.cos(i / 15.0);
            double outside = 0.003 + 0.0006 * StrictMath.sin(i / 40.0);
            double share = dries && i / 4 % 3 == 0 ? 1 : 0;
            double sum = 0;
            for (int minute = 0; minute < 15; minute++) {
                double perS = wetting * (saturatedKgPerKg(6) - humidity)
                        + exchange * (outside - humidity)
                        - share * ratedKgPerS * humidity;
                humidity += perS * 60 / airKg;
                sum += humidity / 15;
            }
            int ofDay = i % DAY_QUARTERS;
            double readKgPerKg = sum * (1 + 0.01 * chance.nextGaussian());
            all.add(new DampQuarter(
                    NOON_EPOCH_S + i * 900L, airC, readKgPerKg, outside, share, ofDay >= 24 && ofDay < 72, true));
        }
        return all;
    }

    @Test
    void aDryerTellsHowMuchWaterMoves() {
        Moisture.Learned found = (Moisture.Learned) MoistureFit.of(site, assumed, days(12, 0.5, 0.6, true));
        double exchange = 0.5 * assumed.airExchangeKgPerS().value();
        double wetting = 0.6 * assumed.wettingKgPerS().value();
        assertThat(exchange)
                .isBetween(
                        found.airExchangeKgPerS().least(),
                        found.airExchangeKgPerS().most());
        assertThat(wetting)
                .isBetween(found.wettingKgPerS().least(), found.wettingKgPerS().most());
        assertThat(found.wettingKgPerS().value() / found.airExchangeKgPerS().value() / (wetting / exchange))
                .isBetween(0.75, 1.3);
    }

    @Test
    void withoutADryerTheirRatioIsLearnedAndTheirSizeStaysInDoubt() {
        Moisture.Learned found = (Moisture.Learned) MoistureFit.of(site, assumed, days(12, 1.6, 0.8, false));
        Figure exchange = found.airExchangeKgPerS();
        assertThat(exchange.standardError()).isGreaterThan(0.15 * exchange.value());
        assertThat(found.ratioError()).isLessThan(exchange.standardError() / exchange.value());
        assertThat(found.wettingKgPerS().value()
                        / exchange.value()
                        / (assumed.wettingKgPerS().value()
                                / assumed.airExchangeKgPerS().value()))
                .isBetween(0.35, 0.7);
    }

    @Test
    void whatIsLearnedForetellsOtherNightsBetter() {
        List<DampQuarter> all = days(16, 0.5, 1.2, true);
        Moisture.Learned found = (Moisture.Learned) MoistureFit.of(site, assumed, all.subList(0, 12 * DAY_QUARTERS));
        List<DampQuarter> later = all.subList(12 * DAY_QUARTERS, all.size());
        assertThat(MoistureFit.missedShare(site, found.in(assumed), later))
                .isLessThan(MoistureFit.missedShare(site, assumed, later) / 2);
    }

    @Test
    void tooFewNightsAndNightsAtSaturationAreNoKnowledge() {
        assertThat(MoistureFit.of(site, assumed, days(3, 1, 1, true))).isInstanceOf(Moisture.Unclear.class);
        List<DampQuarter> dripping = days(12, 1, 1, true).stream()
                .map(q -> new DampQuarter(
                        q.epochS(), q.airC(), saturatedKgPerKg(q.airC()), q.outsideKgPerKg(), 0, q.dark(), true))
                .toList();
        assertThat(MoistureFit.of(site, assumed, dripping)).isInstanceOf(Moisture.Unclear.class);
    }

    @Test
    void anOpenDoorTeachesNothing() {
        List<DampQuarter> open = days(12, 1, 1, true).stream()
                .map(q -> new DampQuarter(
                        q.epochS(), q.airC(), q.humidityKgPerKg(), q.outsideKgPerKg(), 0, q.dark(), false))
                .toList();
        assertThat(MoistureFit.of(site, assumed, open)).isInstanceOf(Moisture.Unclear.class);
    }
}
