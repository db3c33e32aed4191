package rimeward.core.guard;

/**
 * How long ago a relay last changed and last closed. Both stop counting at {@link #ENOUGH_S}: no rule asks for more, and
 * the guard's states stay finite.
 */
public record MachineClock(double sinceSwitchS, double sinceStartS) {
    static final double ENOUGH_S = 3600;

    /** Nothing recent: every rule is satisfied. */
    static final MachineClock RESTED = new MachineClock(ENOUGH_S, ENOUGH_S);

    /** History unknown: as if it had stopped this moment, since a compressor must not start twice in a row. */
    static final MachineClock UNKNOWN = new MachineClock(0, ENOUGH_S);

    MachineClock after(double dtS, boolean was, boolean is) {
        if (was == is) {
            return sinceSwitchS >= ENOUGH_S && sinceStartS >= ENOUGH_S
                    ? this
                    : new MachineClock(sum(sinceSwitchS, dtS), sum(sinceStartS, dtS));
        }
        return new MachineClock(0, is ? 0 : sum(sinceStartS, dtS));
    }

    static double sum(double ageS, double dtS) {
        return StrictMath.min(ENOUGH_S, ageS + dtS);
    }
}
