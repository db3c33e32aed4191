package rimeward.adapter.pi;

import rimeward.core.reading.Reading;
import rimeward.core.reading.Signal;

/** A contact's last settled state. Its thread puts, the control loop looks. */
final class ContactCell {
    /** A new state counts once it has lasted this long, s: contacts bounce, floats bob. Own choice. */
    static final double SETTLE_S = 0.5;

    /** Not read for this long it says nothing, s. Own choice. */
    static final double GRACE_S = 5;

    private final String what;
    private final Told told = new Told();
    private Signal settled = Signal.LOST;
    private boolean active;
    private long sinceNs;
    private long readNs;
    private String why = "nothing has been read yet";

    /** Makes it, with what people call it: {@code the tank's float}. */
    ContactCell(String what) {
        this.what = what;
    }

    synchronized void put(boolean activeNow, long nowNs) {
        boolean known = isKnown(nowNs);
        if (!known || activeNow != active) {
            active = activeNow;
            sinceNs = nowNs;
        }
        if (!known || nowNs - sinceNs >= SETTLE_S * 1e9) {
            settled = active ? Signal.ON : Signal.OFF;
        }
        readNs = nowNs;
        why = "it has not been read for a while";
    }

    synchronized void failed(String because) {
        why = because;
    }

    /** The state, told once in the log when it cannot be read and once when it can again. */
    synchronized Signal latch(long nowNs) {
        boolean known = isKnown(nowNs);
        told.look(!known, nowNs, () -> what + " cannot be read: " + why, () -> what + " is read again");
        return known ? settled : Signal.LOST;
    }

    /** The same as the power of a machine that draws this when it is on. */
    synchronized Reading latchW(double ratedW, long nowNs) {
        Signal on = latch(nowNs);
        return on == Signal.LOST
                ? Reading.NO_ANSWER
                : new Reading.Value(on == Signal.ON ? ratedW : 0, StrictMath.max(0, (nowNs - readNs) / 1e9));
    }

    private boolean isKnown(long nowNs) {
        return settled != Signal.LOST && nowNs - readNs <= GRACE_S * 1e9;
    }
}
