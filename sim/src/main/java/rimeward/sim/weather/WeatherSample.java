package rimeward.sim.weather;

/**
 * The weather at one moment.
 *
 * @param outsideAirC air temperature in the shade, −60…60 °C (the range of our saturation curve)
 * @param vapourPa partial pressure of water vapour, 0…20000 Pa
 * @param windMPerS mean wind speed as recorded, usually 10 m above ground, 0…75 m/s
 * @param pressurePa pressure at the place itself, not reduced to sea level, 50000…110000 Pa
 * @param cloudFraction covered part of the sky, 0…1
 * @param globalRadiationWPerM2 sun and sky on a level surface, 0…1500 W/m²
 * @param skyC temperature of a black sky that would send down the same long-wave radiation, −100…60 °C
 */
public record WeatherSample(
        double outsideAirC,
        double vapourPa,
        double windMPerS,
        double pressurePa,
        double cloudFraction,
        double globalRadiationWPerM2,
        double skyC) {
    public WeatherSample {
        Limits.require("outsideAirC", outsideAirC, -60, 60);
        Limits.require("vapourPa", vapourPa, 0, 20_000);
        Limits.require("windMPerS", windMPerS, 0, 75);
        Limits.require("pressurePa", pressurePa, 50_000, 110_000);
        Limits.require("cloudFraction", cloudFraction, 0, 1);
        Limits.require("globalRadiationWPerM2", globalRadiationWPerM2, 0, 1500);
        Limits.require("skyC", skyC, -100, 60);
    }

    /** The weather at a place and time of which no radiation was recorded: sun and sky come from cloud, air and vapour. */
    static WeatherSample withoutRecordedSun(
            Place place,
            long epochS,
            double outsideAirC,
            double vapourPa,
            double windMPerS,
            double pressurePa,
            double cloudFraction) {
        double elevationDeg = Sun.at(epochS).from(place).apparentElevationDeg(pressurePa, outsideAirC);
        double sunWPerM2 = Sunshine.clearWPerM2(elevationDeg) * Sunshine.throughCloud(cloudFraction);
        double skyC = Sky.skyC(outsideAirC, vapourPa, cloudFraction);
        return new WeatherSample(outsideAirC, vapourPa, windMPerS, pressurePa, cloudFraction, sunWPerM2, skyC);
    }
}
