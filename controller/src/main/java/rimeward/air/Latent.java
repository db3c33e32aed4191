package rimeward.air;

/** Latent heats of water, J/kg, by temperature in °C. Straight or nearly straight fits, good to 0.2 % from −40 to 50 °C. */
public final class Latent {

    private Latent() {}

    /** Heat to evaporate liquid water: 2501 − 2.361 t kJ/kg (from memory; the fit of Harrison 1963 that FAO-56 annex 3 uses). */
    public static double vaporisationJPerKg(double tC) {
        return (2501 - 2.361 * tC) * 1000;
    }

    /** Heat to sublimate ice, up to 0 °C: 2834.1 − 0.29 t − 0.004 t² kJ/kg (from memory; Rogers and Yau 1989). */
    public static double sublimationJPerKg(double tC) {
        return (2834.1 - 0.29 * tC - 0.004 * tC * tC) * 1000;
    }
}
