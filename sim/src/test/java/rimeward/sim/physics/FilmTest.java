package rimeward.sim.physics;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class FilmTest {
    private static final DryerParameters NO_DRYER = new DryerParameters.None();

    @Test
    void waterSettlesOnAFilmBelowTheDewPoint() {
        Night night = Night.with(NO_DRYER).hours(3);
        assertThat(night.tunnel.filmC()).isLessThan(night.tunnel.dewPointC());
        assertThat(night.tunnel.filmWaterKg()).isPositive();
        assertThat(night.tunnel.filmFrostKg()).isZero();
    }

    @Test
    void aFilmAboveTheDewPointStaysDry() {
        Night night = Night.with(NO_DRYER, new StartState(8, 9, 30, 0, 0));
        night.weather(7, 40, 2, 6).hours(3);
        assertThat(night.tunnel.filmWaterKg()).isZero();
    }

    @Test
    void waterOnTheFilmDriesAwayWhenTheAirIsDry() {
        Night night = Night.with(NO_DRYER).hours(3);
        double wetKg = night.tunnel.filmWaterKg();
        night.tunnel.openings().door(true);
        night.weather(12, 40, 4, 10).hours(4);
        assertThat(night.tunnel.filmWaterKg()).isLessThan(wetKg / 10).isNotNegative();
    }

    @Test
    void frostGrowsInHardFrostAndMeltsWhenItIsWarmed() {
        Night night = Night.with(NO_DRYER).weather(-8, 90, 2, -20).hours(8);
        double frostKg = night.tunnel.filmFrostKg();
        assertThat(frostKg).isGreaterThan(0.05);
        assertThat(night.tunnel.filmWaterKg()).isLessThan(frostKg / 5);
        double gaveJ = night.tunnel.heat().inJ(HeatPath.FREEZING);
        night.weather(6, 90, 2, 4).hours(6);
        assertThat(night.tunnel.filmFrostKg()).isLessThan(0.01);
        assertThat(night.tunnel.heat().inJ(HeatPath.FREEZING)).isLessThan(gaveJ / 2); // the rest evaporated as frost
    }

    @Test
    void moreThanTheFilmHoldsRunsOff() {
        Night night = Night.with(Night.tunnel(100), Defaults.machines(), Defaults.evening());
        night.tunnel.heater().contact(0, true);
        night.tunnel.heater().contact(1, true);
        night.hours(24);
        assertThat(night.tunnel.water().movedKg(WaterPath.RUN_OFF)).isNegative();
        assertThat(night.tunnel.filmWaterKg())
                .isLessThanOrEqualTo(0.06 * Defaults.tunnel().coverM2() + 1e-9);
    }

    @Test
    void aClearSkyCoolsTheFilmBelowTheOutsideAir() {
        Night night = Night.with(NO_DRYER).weather(2, 90, 0.5, -18).hours(10);
        assertThat(night.tunnel.filmC()).isLessThan(2);
    }

    @Test
    void windCoolsAWarmFilm() {
        Night calm = Night.with(NO_DRYER).weather(2, 90, 0, 2).hours(1);
        Night windy = Night.with(NO_DRYER).weather(2, 90, 12, 2).hours(1);
        assertThat(windy.tunnel.filmC()).isLessThan(calm.tunnel.filmC());
        assertThat(windy.tunnel.airC()).isLessThan(calm.tunnel.airC());
    }
}
