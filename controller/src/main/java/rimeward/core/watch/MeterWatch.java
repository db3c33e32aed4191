package rimeward.core.watch;

import rimeward.core.reading.Reading;
import rimeward.site.Machine;

/** What a meter says of one machine. */
final class MeterWatch {
    /** A relay closes late and a meter averages: no judgement sooner than this after a change, s. Own choice. */
    private static final double GRACE_S = 20;

    /** Below this share of its rated power a machine does not do its work (a dryer's fan alone draws less). */
    private static final double WORKING_SHARE = 0.3;

    /** Older than this a power says nothing of now, s: a dryer may have cut out since. Own choice. */
    private static final double MOST_AGE_S = 60;

    /** No machine draws more than this many times its rated power, and a meter that turns backwards is mis-wired. */
    private static final double MOST_SHARE = 3;

    private static final double LEAST_SHARE = -0.1;

    private MeterWatch() {}

    /** The reading if it can be believed, else no answer: the floor may hang on it. */
    static Reading believed(Machine machine, Reading powerW) {
        if (!(powerW instanceof Reading.Value value)) {
            return powerW;
        }
        boolean sound = value.ageS() <= MOST_AGE_S
                && value.value() >= LEAST_SHARE * machine.ratedW()
                && value.value() <= MOST_SHARE * machine.ratedW(); // NaN is none of these
        return sound ? powerW : Reading.NO_ANSWER;
    }

    /** Without a meter, {@link Delivery#UNSEEN} or {@link Delivery#OFF}: all that the command itself tells. */
    static Delivery delivery(Machine machine, Reading powerW, boolean closed, double sinceChangeS) {
        boolean settled = sinceChangeS >= GRACE_S;
        if (!(powerW instanceof Reading.Value value)) {
            return closed ? (settled ? Delivery.UNSEEN : Delivery.STARTING) : Delivery.OFF;
        }
        boolean working = value.value() >= WORKING_SHARE * machine.ratedW();
        if (closed) {
            return working ? Delivery.GIVING : (settled ? Delivery.NOT_GIVING : Delivery.STARTING);
        }
        return working && settled ? Delivery.STUCK_ON : Delivery.OFF;
    }
}
