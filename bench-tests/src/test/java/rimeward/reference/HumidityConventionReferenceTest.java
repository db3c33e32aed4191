package rimeward.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import rimeward.air.MoistAir;
import rimeward.air.RelativeHumidity;
import rimeward.air.Saturation;

/**
 * Source: WMO-No. 8, annex 4.B: below 0 °C weather services report relative humidity over <em>water</em>; ASHRAE's convention is over ice.
 * Air of −5 °C and 90 %: dew point −6.386 °C; frost point −5.650 °C (90 % over water) or −6.227 °C (90 % over ice).
 *
 * <p>Those three numbers follow from the short formulas of that annex, repeated below. Over supercooled water at −5 °C the short formula
 * lies 0.08 % above the detailed ones (it gives 422.19 Pa; Sonntag 1990 421.80, Hyland and Wexler 421.83), and a frost point carries that
 * over undiminished: 0.011 K. So the frost point of 90 % over water is held to 0.005 K against Sonntag's formulas instead, and the
 * short formula's value is only held to within that known 0.011 K.
 */
class HumidityConventionReferenceTest {

    private static final double AIR_C = -5;
    private static final double RH_PERCENT = 90;
    private static final double TOLERANCE_K = 0.005;

    @Test
    void dewPointOfAirAt90PercentOverWater() {
        assertThat(MoistAir.dewPointC(overWaterPa())).isCloseTo(-6.386, within(TOLERANCE_K));
    }

    @Test
    void frostPointOfAirAt90PercentOverIce() {
        double vapourPa = RelativeHumidity.vapourFromOverIceBelowFreezingPa(AIR_C, RH_PERCENT);
        assertThat(MoistAir.frostPointC(vapourPa)).isCloseTo(-6.227, within(TOLERANCE_K));
    }

    @Test
    void frostPointOfAirAt90PercentOverWater() {
        double frostC = MoistAir.frostPointC(overWaterPa());
        assertThat(sonntagIcePa(frostC) / sonntagWaterPa(AIR_C))
                .isCloseTo(RH_PERCENT / 100, within(TOLERANCE_K * 0.085));
        assertThat(frostC).isCloseTo(-5.650, within(0.011));
    }

    @Test
    void thePrintedNumbersAreThoseOfTheShortFormulas() {
        assertThat(shortWaterPa(-6.386) / shortWaterPa(AIR_C)).isCloseTo(0.9, within(1e-4));
        assertThat(shortIcePa(-5.650) / shortWaterPa(AIR_C)).isCloseTo(0.9, within(1e-4));
        assertThat(shortIcePa(-6.227) / shortIcePa(AIR_C)).isCloseTo(0.9, within(1e-4));
    }

    /** The water formula is used beyond its stated range (0…200 °C) below freezing: how far that can be trusted. */
    @Test
    void supercooledWaterAgreesWithSonntagDownToMinus40() {
        for (double tC = -40; tC <= 0; tC++) {
            assertThat(Saturation.overWaterPa(tC) / sonntagWaterPa(tC)).isCloseTo(1, within(1e-3));
            assertThat(Saturation.overIcePa(tC) / sonntagIcePa(tC)).isCloseTo(1, within(1e-3));
            assertThat(Saturation.overWaterPa(tC) / shortWaterPa(tC)).isCloseTo(1, within(6e-3)); // WMO: ±0.6 %
        }
    }

    private static double overWaterPa() {
        return RelativeHumidity.vapourFromOverWaterPa(AIR_C, RH_PERCENT);
    }

    private static double shortWaterPa(double tC) {
        return 611.2 * StrictMath.exp(17.62 * tC / (243.12 + tC));
    }

    private static double shortIcePa(double tC) {
        return 611.2 * StrictMath.exp(22.46 * tC / (272.62 + tC));
    }

    /** Sonntag 1990 (coefficients from memory), −100…100 °C. */
    private static double sonntagWaterPa(double tC) {
        double k = tC + 273.15;
        double polynomial = 16.635794 - 2.711193e-2 * k + 1.673952e-5 * k * k;
        return 100 * StrictMath.exp(-6096.9385 / k + polynomial + 2.433502 * StrictMath.log(k));
    }

    /** Sonntag 1990 (coefficients from memory), −100…0 °C. */
    private static double sonntagIcePa(double tC) {
        double k = tC + 273.15;
        double polynomial = 24.721994 + 1.0613868e-2 * k - 1.3198825e-5 * k * k;
        return 100 * StrictMath.exp(-6024.5282 / k + polynomial - 0.49382577 * StrictMath.log(k));
    }
}
