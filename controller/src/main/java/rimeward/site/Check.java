package rimeward.site;

import java.util.Locale;

/** Refuses impossible values with a message that names the value and its limits. */
final class Check {
    private Check() {}

    static double within(String name, double value, double least, double most) {
        if (!(value >= least && value <= most)) { // written so that NaN is refused too
            throw new IllegalArgumentException(
                    String.format(Locale.ROOT, "%s is %s; it must lie between %s and %s", name, value, least, most));
        }
        return value;
    }

    static String id(String name, String value) {
        if (!value.matches("[a-z0-9][a-z0-9-]*")) {
            throw new IllegalArgumentException(
                    name + " is \"" + value + "\"; it must be lower-case letters, digits and '-' only");
        }
        return value;
    }

    static void that(boolean holds, String message) {
        if (!holds) {
            throw new IllegalArgumentException(message);
        }
    }
}
