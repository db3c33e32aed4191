package rimeward.site;

/**
 * A sensor and how far it may be believed.
 *
 * @param hasHumidity whether it reports relative humidity as well as temperature
 * @param uncertaintyK stated uncertainty of its temperature, K; taken off every inside reading
 * @param uncertaintyPercent stated uncertainty of its humidity, % RH
 * @param limits what a sound reading of it can be
 * @param attached how its readings come in
 */
public record Sensor(
        String id,
        Place place,
        boolean hasHumidity,
        double uncertaintyK,
        double uncertaintyPercent,
        SensorLimits limits,
        Attached attached) {
    /** A sensor that nothing is attached to: simulated or replayed. */
    public Sensor(
            String id,
            Place place,
            boolean hasHumidity,
            double uncertaintyK,
            double uncertaintyPercent,
            SensorLimits limits) {
        this(id, place, hasHumidity, uncertaintyK, uncertaintyPercent, limits, new Attached.NotAttached());
    }

    public Sensor {
        Check.id("sensor id", id);
        Check.within("uncertaintyK of sensor " + id, uncertaintyK, 0, 3);
        Check.within("uncertaintyPercent of sensor " + id, uncertaintyPercent, 0, 15);
    }
}
