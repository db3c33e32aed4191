package rimeward.homie;

/** The scale of temperature that the grower reads. The units are the convention's, byte for byte. */
enum Scale {
    CELSIUS("\u00b0C", 1, 0),
    FAHRENHEIT("\u00b0F", 1.8, 32);

    /** A temperature is told anew once it has moved so far, K: twice what a fair sensor's noise is. Own choice. */
    private static final double STEP_K = 0.15;

    private final String unit;
    private final double perK;
    private final double atZeroC;

    Scale(String unit, double perK, double atZeroC) {
        this.unit = unit;
        this.perK = perK;
        this.atZeroC = atZeroC;
    }

    String unit() {
        return unit;
    }

    double of(double tempC) {
        return tempC * perK + atZeroC;
    }

    double toC(double temp) {
        return (temp - atZeroC) / perK;
    }

    Shown shown(double tempC) {
        return Shown.number(of(tempC), STEP_K * perK, 1);
    }

    /** In words, for a sentence. */
    String inWords(double tempC) {
        return Decimal.of(of(tempC), 1) + " " + unit;
    }
}
