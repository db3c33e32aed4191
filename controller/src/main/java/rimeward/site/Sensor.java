package rimeward.site;

/**
 * A sensor and how far it may be believed.
 *
 * @param hasHumidity whether it reports relative humidity as well as temperature
 * @param uncertaintyK stated uncertainty of its temperature, K; taken off every inside reading
 * @param uncertaintyPercent stated uncertainty of its humidity, % RH
 * @param limits what a sound reading of it can be
 */
public record Sensor(
        String id,
        Place place,
        boolean hasHumidity,
        double uncertaintyK,
        double uncertaintyPercent,
        SensorLimits limits) {
    public Sensor {
        Check.id("sensor id", id);
        Check.within("uncertaintyK of sensor " + id, uncertaintyK, 0, 3);
        Check.within("uncertaintyPercent of sensor " + id, uncertaintyPercent, 0, 15);
    }
}
