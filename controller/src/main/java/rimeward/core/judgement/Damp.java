package rimeward.core.judgement;

/** The moisture inside, as far as it is known. */
public sealed interface Damp {
    /**
     * At least one humidity is believed.
     *
     * @param wettestRhPercent highest believed relative humidity over water, %
     * @param dewPointC highest dew point (over water) among the believed sensors, °C
     * @param humidityKgPerKg humidity ratio at that dew point
     */
    record Seen(double wettestRhPercent, double dewPointC, double humidityKgPerKg) implements Damp {}

    record Unseen() implements Damp {}

    Damp UNSEEN = new Unseen();
}
