package rimeward.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rimeward.air.AirConstants;
import rimeward.air.MoistAir;
import rimeward.air.Saturation;

/**
 * Source: npm {@code psychrolib} 1.1.1 (ASHRAE Fundamentals 2017), run here on 2025-11-25 at 101325 Pa: the ten printed lines are its
 * output for GetSatVapPres, GetHumRatioFromRelHum, GetTDewPointFromRelHum, GetTWetBulbFromRelHum, GetMoistAirEnthalpy and
 * 1 / GetMoistAirVolume. It takes relative humidity, and the dew point, over ice at and below 0.01 °C.
 */
class HumidAirReferenceTest {

    private static final double PRESSURE_PA = AirConstants.STANDARD_PRESSURE_PA;
    private static final double TOLERANCE_PERCENT = 0.01;
    private static final double TOLERANCE_K = 0.01;

    @ParameterizedTest(name = "{0} °C, {1} %")
    @CsvSource({
        "-15, 80, 165.300, 0.0008128, -17.3958, -15.4548, -13080, 1.365626",
        "-10, 85, 259.903, 0.0013590, -11.8179, -10.4851, -6686, 1.338505",
        "-5, 90, 401.764, 0.0022274, -6.2270, -5.4394, 520, 1.311719",
        "-1, 90, 562.672, 0.0031240, -2.2641, -1.5441, 6801, 1.290586",
        "0, 90, 611.154, 0.0033946, -1.2735, -0.5717, 8490, 1.285304",
        "2, 85, 705.954, 0.0037052, -0.2222, 1.0731, 11292, 1.275328",
        "5, 80, 872.487, 0.0043141, 1.8413, 3.5876, 15860, 1.260347",
        "10, 75, 1227.995, 0.0057050, 5.7783, 7.8477, 24434, 1.235347",
        "20, 50, 2338.804, 0.0072617, 9.2724, 13.7834, 38552, 1.190255",
        "30, 60, 4246.030, 0.0160409, 21.3880, 23.8125, 71193, 1.135153"
    })
    void agreesWithPsychrolib(
            double airC,
            double rhPercent,
            double saturationPa,
            double humidityKgPerKg,
            double dewC,
            double wetBulbC,
            double enthalpyJPerKg,
            double dryAirKgPerM3) {
        assertThat(Saturation.overSurfacePa(airC)).isCloseTo(saturationPa, withinPercentage(TOLERANCE_PERCENT));

        double vapourPa = rhPercent / 100 * (airC <= 0.01 ? Saturation.overIcePa(airC) : Saturation.overWaterPa(airC));
        double humidity = MoistAir.humidityRatioKgPerKg(vapourPa, PRESSURE_PA);
        assertThat(humidity).isCloseTo(humidityKgPerKg, withinPercentage(TOLERANCE_PERCENT));
        assertThat(dewC < 0 ? MoistAir.frostPointC(vapourPa) : MoistAir.dewPointC(vapourPa))
                .isCloseTo(dewC, within(TOLERANCE_K));
        assertThat(MoistAir.wetBulbC(airC, humidity, PRESSURE_PA)).isCloseTo(wetBulbC, within(TOLERANCE_K));
        double enthalpyTolerance = Math.max(1, TOLERANCE_PERCENT / 100 * Math.abs(enthalpyJPerKg)); // printed to 1 J/kg
        assertThat(MoistAir.enthalpyJPerKg(airC, humidity)).isCloseTo(enthalpyJPerKg, within(enthalpyTolerance));
        assertThat(MoistAir.densityKgPerM3(airC, humidity, PRESSURE_PA))
                .isCloseTo(dryAirKgPerM3, withinPercentage(TOLERANCE_PERCENT));
    }
}
