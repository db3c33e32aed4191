package rimeward.adapter.pi;

import rimeward.core.reading.Reading;

/** The last that a power chip said. Its thread puts, the control loop looks. */
final class PowerCell implements PowerSense {
    private final String what;
    private final String where;
    private final Told told = new Told();
    private Slot powerW = Slot.EMPTY;

    PowerCell(String what, String where) {
        this.what = what;
        this.where = where;
    }

    synchronized void put(Reading now, long nowNs) {
        powerW = powerW.after(now, nowNs);
    }

    @Override
    public synchronized Reading latch(long nowNs) {
        Reading now = powerW.at(nowNs, Cell.GRACE_S);
        told.look(
                now instanceof Reading.Lost,
                nowNs,
                () -> what + " gives no sound reading; look at its wires, and whether exactly one chip is called so ("
                        + where + ")",
                () -> what + " is read again");
        return now;
    }
}
