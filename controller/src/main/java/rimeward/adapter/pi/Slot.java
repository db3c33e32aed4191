package rimeward.adapter.pi;

import rimeward.core.reading.Loss;
import rimeward.core.reading.Reading;

/**
 * A number and when it was taken, and why the last try gave none.
 *
 * @param takenNs monotonic, ns
 */
record Slot(Reading last, long takenNs, Reading.Lost why) {
    static final Slot EMPTY = new Slot(Reading.NO_ANSWER, 0, new Reading.Lost(Loss.NO_ANSWER));

    /** After one more try; one that failed leaves the last good number to grow old, and an older number changes nothing. */
    Slot after(Reading now, long nowNs) {
        if (last instanceof Reading.Value && nowNs < takenNs) {
            return this;
        }
        if (now instanceof Reading.Lost lost) {
            return new Slot(last, takenNs, lost);
        }
        return new Slot(now, nowNs, new Reading.Lost(Loss.NO_ANSWER));
    }

    /** The number with its age, or the reason why there is none that is not older than this. */
    Reading at(long nowNs, double graceS) {
        if (!(last instanceof Reading.Value value)) {
            return last instanceof Reading.Lost ? why : last;
        }
        double ageS = (nowNs - takenNs) / 1e9;
        return ageS <= graceS ? new Reading.Value(value.value(), StrictMath.max(0, ageS)) : why;
    }
}
