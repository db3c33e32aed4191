package rimeward.adapter.pi;

import java.util.ArrayDeque;
import java.util.Deque;
import rimeward.core.reading.Reading;

/**
 * Power from a meter's pulses, each of which stands for the same energy. Between two pulses the mean power is exact; while the next one
 * is due, less than one pulse's energy has passed since the last, so the power is below that energy over the time waited, and sinks.
 * Whoever counts puts, the control loop looks.
 */
final class PulsePower implements PowerSense {
    /** The mean of so much is taken where pulses come fast, s: a reading by a coarse clock is then good to a few per cent. */
    private static final double MEAN_S = 10;

    /** A machine that works has given a pulse within this ({@link rimeward.site.Meter#MOST_SPACING_S}), s. */
    private static final double SURE_S = 20;

    /** Without a pulse for this long it draws nothing, s. */
    static final double ZERO_AFTER_S = 600;

    /** Not asked for this long, nobody knows whether there were pulses, s. */
    private static final double GRACE_S = 5;

    private final String what;
    private final double pulseJ;
    private final Told told = new Told();
    private final Deque<Mark> marks = new ArrayDeque<>();
    private boolean counting;
    private long count;
    private long sinceNs;
    private long askedNs;
    private String why = "nothing has been read yet";

    /** How many there had been when one was seen. */
    private record Mark(long atNs, long count) {}

    PulsePower(String what, double pulsesPerKWh) {
        this.what = what;
        pulseJ = 3.6e6 / pulsesPerKWh;
    }

    /** Counting begins, or begins anew: what came before is not known. */
    synchronized void begin(long nowNs) {
        marks.clear();
        counting = true;
        sinceNs = nowNs;
        askedNs = nowNs;
        why = "it has not been read for a while";
    }

    /** So many more pulses, the newest at this time. */
    synchronized void pulses(long more, long atNs) {
        count += more;
        sinceNs = atNs;
        marks.addLast(new Mark(atNs, count));
        while (marks.size() > 2 && atNs - marks.getFirst().atNs > MEAN_S * 1e9) {
            marks.removeFirst();
        }
    }

    /** All pulses up to now have been counted. */
    synchronized void asked(long nowNs) {
        askedNs = nowNs;
    }

    /** The source fails: pulses may be missed from now on. */
    synchronized void failed(String because) {
        counting = false;
        why = because;
    }

    @Override
    public synchronized Reading latch(long nowNs) {
        boolean known = counting && nowNs - askedNs <= GRACE_S * 1e9;
        told.look(!known, nowNs, () -> what + " cannot be read: " + why, () -> what + " is read again");
        return known ? power(StrictMath.max(0, (nowNs - sinceNs) / 1e9)) : Reading.NO_ANSWER;
    }

    private Reading power(double waitedS) {
        if (waitedS >= ZERO_AFTER_S) {
            return new Reading.Value(0, 0);
        }
        boolean sure = waitedS >= SURE_S;
        if (marks.size() < 2) {
            return sure ? new Reading.Value(pulseJ / waitedS, 0) : Reading.NO_ANSWER;
        }
        double powerW = waitedS > 0 ? StrictMath.min(meanW(), pulseJ / waitedS) : meanW();
        return new Reading.Value(powerW, sure ? 0 : waitedS);
    }

    private double meanW() {
        Mark first = marks.getFirst();
        Mark last = marks.getLast();
        return pulseJ * (last.count - first.count) / StrictMath.max(1e-3, (last.atNs - first.atNs) / 1e9);
    }
}
