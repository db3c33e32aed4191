package rimeward.site;

import java.util.Locale;

/** What temperatures are told in. Settings and the record stay with °C. */
public enum Degrees {
    CELSIUS("\u00b0C", "K", 1, 0),
    FAHRENHEIT("\u00b0F", "\u00b0F", 1.8, 32);

    private final String unit;
    private final String spanUnit;
    private final double perK;
    private final double atZeroC;

    Degrees(String unit, String spanUnit, double perK, double atZeroC) {
        this.unit = unit;
        this.spanUnit = spanUnit;
        this.perK = perK;
        this.atZeroC = atZeroC;
    }

    public String unit() {
        return unit;
    }

    /** The unit of a difference. */
    public String spanUnit() {
        return spanUnit;
    }

    public double of(double tempC) {
        return tempC * perK + atZeroC;
    }

    public double ofSpan(double spanK) {
        return spanK * perK;
    }

    /** Back to °C. */
    public double toC(double temp) {
        return (temp - atZeroC) / perK;
    }

    /** A temperature for people: "3.7 °C". */
    public String text(double tempC) {
        return String.format(Locale.ROOT, "%.1f %s", of(tempC), unit);
    }

    /** A difference: "1.5 K". */
    public String span(double spanK) {
        return String.format(Locale.ROOT, "%.1f %s", ofSpan(spanK), spanUnit);
    }
}
