package rimeward.sim.physics;

import java.util.Locale;

/** Refuses impossible parameters with a message that names the value and its limits. */
final class Require {
    private Require() {}

    static void within(String name, double value, double least, double most) {
        if (!(value >= least && value <= most)) { // written so that NaN is refused too
            throw new IllegalArgumentException(
                    String.format(Locale.ROOT, "%s is %s; it must lie between %s and %s", name, value, least, most));
        }
    }

    static void that(boolean holds, String message) {
        if (!holds) {
            throw new IllegalArgumentException(message);
        }
    }
}
