package rimeward.sim.weather;

/**
 * Where the weather is: geographic latitude (north positive) and longitude (east positive) in degrees, altitude in metres
 * above sea level.
 */
public record Place(double latitudeDeg, double longitudeDeg, double altitudeM) {
    public Place {
        Limits.require("latitudeDeg", latitudeDeg, -90, 90);
        Limits.require("longitudeDeg", longitudeDeg, -180, 180);
        Limits.require("altitudeM", altitudeM, -430, 5500);
    }
}
