package rimeward.site;

import java.util.Locale;

/** What temperatures are told in. Settings and the record stay with °C. */
public enum Degrees {
    CELSIUS,
    FAHRENHEIT;

    /** A temperature for people: "3.7 °C". */
    public String text(double tempC) {
        return this == CELSIUS
                ? String.format(Locale.ROOT, "%.1f °C", tempC)
                : String.format(Locale.ROOT, "%.1f °F", tempC * 1.8 + 32);
    }

    /** A difference: "1.5 K". */
    public String span(double spanK) {
        return this == CELSIUS
                ? String.format(Locale.ROOT, "%.1f K", spanK)
                : String.format(Locale.ROOT, "%.1f °F", spanK * 1.8);
    }
}
