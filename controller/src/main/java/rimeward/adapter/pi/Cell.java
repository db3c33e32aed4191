package rimeward.adapter.pi;

import rimeward.core.reading.Loss;
import rimeward.core.reading.Reading;
import rimeward.core.reading.SensorReading;
import rimeward.site.Attached;
import rimeward.site.Sensor;

/**
 * The last that a sensor said. Its bus's thread puts, the control loop looks; neither waits for the other beyond a few copies. A read
 * that fails leaves the last good number to grow old, and so does one that hangs; older than {@link #GRACE_S} it is lost.
 */
final class Cell {
    /** Longer than a few time-outs of a DHT22 in a row, shorter than a light tunnel takes to freeze. Common practice, no source. */
    static final double GRACE_S = 30;

    private final Sensor sensor;
    private final double graceS;
    private final Told told = new Told();
    private Slot airC = Slot.EMPTY;
    private Slot rhPercent = Slot.EMPTY;

    Cell(Sensor sensor) {
        this.sensor = sensor;
        boolean ownPace = sensor.attached() instanceof Attached.HandedIn; // others send as seldom as they like
        double mostAgeS = sensor.limits().maxAgeS();
        graceS = ownPace ? mostAgeS : StrictMath.min(GRACE_S, mostAgeS);
    }

    synchronized void put(SensorReading now, long nowNs) {
        airC = airC.after(now.airC(), nowNs);
        rhPercent = rhPercent.after(now.rhPercent(), nowNs);
    }

    /** What to believe it said, with its age; told once in the log when it goes and once when it comes back. */
    synchronized SensorReading latch(long nowNs) {
        Reading air = airC.at(nowNs, graceS);
        Reading rh = sensor.hasHumidity() ? rhPercent.at(nowNs, graceS) : Reading.NOT_FITTED;
        told.look(
                air instanceof Reading.Lost || rh instanceof Reading.Lost,
                nowNs,
                () -> lost(air, rh),
                () -> "sensor " + sensor.id() + " is back");
        return new SensorReading(air, rh);
    }

    private String lost(Reading air, Reading rh) {
        if (sensor.attached() instanceof Attached.NotAttached) {
            return "sensor " + sensor.id() + " gives nothing: the settings do not say how it is attached";
        }
        String which = air instanceof Reading.Lost ? "" : " of humidity";
        Loss why = (air instanceof Reading.Lost lost ? lost : (Reading.Lost) rh).why();
        return "sensor " + sensor.id() + " gives no sound reading" + which + ": "
                + switch (why) {
                    case NO_ANSWER -> "no answer";
                    case BAD_CHECKSUM -> "wrong checksum";
                    case FAULT_VALUE -> "a value that means a fault";
                }
                + "; look at its plug, its cable and the service's rights ("
                + sensor.attached().inWords() + ")";
    }
}
