package rimeward.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class MoistAirTest {

    private static final double SEA_PA = AirConstants.STANDARD_PRESSURE_PA;

    @Test
    void dewAndFrostPointUndoTheFormula() {
        for (double tC = -60; tC <= 90; tC += 0.0137) {
            assertThat(MoistAir.dewPointC(HylandWexler.overWaterPa(tC))).isCloseTo(tC, within(1e-6));
            assertThat(MoistAir.frostPointC(HylandWexler.overIcePa(tC))).isCloseTo(tC, within(1e-6));
        }
    }

    @Test
    void pointsBeyondTheRangeGiveTheNearerEnd() {
        assertThat(MoistAir.dewPointC(0)).isCloseTo(-60, within(1e-6));
        assertThat(MoistAir.frostPointC(-1)).isCloseTo(-60, within(1e-6));
        assertThat(MoistAir.dewPointC(1e9)).isCloseTo(90, within(1e-6));
        assertThat(MoistAir.dewPointC(Double.NaN)).isNaN();
    }

    @Test
    void frostPointLiesAboveDewPointBelowFreezing() {
        double vapourPa = RelativeHumidity.vapourFromOverWaterPa(-10, 80);
        assertThat(MoistAir.frostPointC(vapourPa)).isGreaterThan(MoistAir.dewPointC(vapourPa) + 1);
    }

    @Test
    void humidityRatioAndVapourPressureUndoEachOther() {
        for (double vapourPa = 0; vapourPa < 5000; vapourPa += 37) {
            double humidity = MoistAir.humidityRatioKgPerKg(vapourPa, SEA_PA);
            assertThat(MoistAir.vapourPa(humidity, SEA_PA)).isCloseTo(vapourPa, within(1e-9));
        }
    }

    @Test
    void wetBulbSatisfiesItsHeatBalance() {
        for (double airC = -20; airC <= 45; airC += 1.7) {
            for (double rhPercent = 5; rhPercent <= 95; rhPercent += 10) {
                double vapourPa = RelativeHumidity.vapourFromOverIceBelowFreezingPa(airC, rhPercent);
                double humidity = MoistAir.humidityRatioKgPerKg(vapourPa, SEA_PA);
                double bulbC = MoistAir.wetBulbC(airC, humidity, SEA_PA);
                assertThat(bulbC).isLessThanOrEqualTo(airC);
                assertThat(humidityFromBulb(airC, bulbC)).isCloseTo(humidity, within(1e-10));
            }
        }
    }

    @Test
    void wetBulbIsTheAirTemperatureWhenSaturated() {
        double humidity = MoistAir.humidityRatioKgPerKg(Saturation.overWaterPa(12), SEA_PA);
        assertThat(MoistAir.wetBulbC(12, humidity, SEA_PA)).isCloseTo(12, within(1e-8));
        assertThat(MoistAir.wetBulbC(12, 2 * humidity, SEA_PA)).isEqualTo(12);
        assertThat(MoistAir.wetBulbC(-12, humidity, SEA_PA)).isEqualTo(-12);
    }

    @Test
    void densityIsTheMassOfDryAirInAMixture() {
        double vapourPa = 1200;
        double humidity = MoistAir.humidityRatioKgPerKg(vapourPa, SEA_PA);
        double dryGasLaw = (SEA_PA - vapourPa) / (AirConstants.DRY_AIR_GAS_J_PER_KG_K * (15 + 273.15));
        assertThat(MoistAir.densityKgPerM3(15, humidity, SEA_PA)).isCloseTo(dryGasLaw, within(1e-6));
    }

    @Test
    void standardAtmosphereThinsWithAltitude() {
        assertThat(MoistAir.pressurePa(0)).isEqualTo(SEA_PA);
        assertThat(MoistAir.pressurePa(300)).isCloseTo(97_772.56, within(0.01)); // npm psychrolib 1.1.1
    }

    /** ASHRAE Fundamentals 2017, ch. 1, eq. 33 and 35 solved for the humidity ratio: the way a psychrometer is read. */
    private static double humidityFromBulb(double airC, double bulbC) {
        double saturated = MoistAir.humidityRatioKgPerKg(Saturation.overSurfacePa(bulbC), SEA_PA);
        double dryK = 1.006 * (airC - bulbC);
        return bulbC >= 0
                ? ((2501 - 2.326 * bulbC) * saturated - dryK) / (2501 + 1.86 * airC - 4.186 * bulbC)
                : ((2830 - 0.24 * bulbC) * saturated - dryK) / (2830 + 1.86 * airC - 2.1 * bulbC);
    }
}
