package rimeward.core.watch;

/** Something that follows something else, the quicker the farther off it is. */
final class Lag {
    private Lag() {}

    /** Where it is after {@code dtS}, when it goes {@code perS} of the way per second. */
    static double after(double was, double towards, double perS, double dtS) {
        return was + (towards - was) * StrictMath.min(1, dtS * perS);
    }
}
