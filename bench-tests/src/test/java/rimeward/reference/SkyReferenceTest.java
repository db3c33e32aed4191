package rimeward.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rimeward.sim.weather.Sky;
import rimeward.sim.weather.Sunshine;

/** Radiation from above against published values. */
class SkyReferenceTest {
    @ParameterizedTest
    @CsvSource({"10, 135.742", "30, 487.894", "90, 1035.092"})
    void clearSky(double elevationDeg, double wPerM2) {
        // Haurwitz, J. Meteorology 2 (1945); values of pvlib's own test of its haurwitz().
        assertThat(Sunshine.clearWPerM2(elevationDeg)).isCloseTo(wPerM2, within(1e-3));
    }

    @Test
    void noSunAtNight() {
        assertThat(Sunshine.clearWPerM2(0)).isZero();
        assertThat(Sunshine.clearWPerM2(-30)).isZero();
    }

    @ParameterizedTest
    @CsvSource({"0, 1", "4, .9290", "6, .7180", "8, .25"})
    void sunThroughCloud(double oktas, double part) {
        // Kasten & Czeplak, Solar Energy 24 (1980) 177–189: 1 − 0.75 (N/8)^3.4.
        assertThat(Sunshine.throughCloud(oktas / 8)).isCloseTo(part, within(1e-4));
    }

    @Test
    void clearSkyEmissivity() {
        // Li, Jiang & Coimbra, Solar Energy 144 (2017) 40–48, Brunt's form: 0.618 + 0.056 √4 at 4 hPa.
        assertThat(Sky.bruntEmissivity(400)).isCloseTo(0.730, within(1e-9));
        // The same paper, Berdahl–Martin's form .758 + .521 x + .625 x², x = dew point / 100, worked by hand.
        assertThat(Sky.berdahlMartinEmissivity(0)).isCloseTo(0.758, within(1e-9));
        assertThat(Sky.berdahlMartinEmissivity(10)).isCloseTo(0.81635, within(1e-9));
        assertThat(Sky.berdahlMartinEmissivity(-10)).isCloseTo(0.71215, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"400, -5.7", "872.6, 5", "1228, 10"})
    void theTwoFormsSayMuchTheSame(double vapourPa, double dewPointC) {
        assertThat(Sky.bruntEmissivity(vapourPa)).isCloseTo(Sky.berdahlMartinEmissivity(dewPointC), within(0.005));
    }

    @Test
    void skyUnderCloud() {
        // Unsworth & Monteith, Quart. J. Roy. Met. Soc. 101 (1975): (1 − 0.84 c) ε + 0.84 c; worked by hand.
        assertThat(Sky.emissivityUnderCloud(0.7, 0)).isEqualTo(0.7);
        assertThat(Sky.emissivityUnderCloud(0.7, 0.5)).isCloseTo(0.826, within(1e-9));
        assertThat(Sky.emissivityUnderCloud(0.7, 1)).isCloseTo(0.952, within(1e-9));
    }

    @Test
    void netLongWave() {
        // FAO-56 (1998) example 11: 19.1/25.1 °C, solar radiation 14.5 of 18.8 MJ/m²d, 2.1 kPa → 3.5 MJ/m²d.
        assertThat(Sky.dailyNetLossMJPerM2(19.1, 25.1, 2100, 14.5 / 18.8)).isCloseTo(3.5, within(0.05));
    }

    @Test
    void skyTemperatureAgreesWithTheNetLossOfAnotherRule() {
        // The net loss to our clear sky at 10 °C and 0.8 kPa against FAO-56 eq. 39 of a clear day (R/R₀ = 1): two
        // empirical rules,
        // fitted to different places; a tenth is what one may ask of them.
        double skyK = Sky.skyC(10, 800, 0) + 273.15;
        double lossMJPerM2 = 5.670374e-8 * (Math.pow(283.15, 4) - Math.pow(skyK, 4)) * 86_400 / 1e6;
        assertThat(lossMJPerM2).isCloseTo(Sky.dailyNetLossMJPerM2(10, 10, 800, 1), within(0.1 * lossMJPerM2));
    }
}
