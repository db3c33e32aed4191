package rimeward.core.judgement;

/** The moisture outside, as far as it is known. */
public sealed interface OutsideDamp {
    /** Humidity ratio, kg/kg. */
    record Seen(double humidityKgPerKg) implements OutsideDamp {}

    record Unseen() implements OutsideDamp {}

    OutsideDamp UNSEEN = new Unseen();
}
