package rimeward.adapter.pi;

import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rimeward.core.reading.Loss;
import rimeward.core.reading.Reading;
import rimeward.core.reading.SensorReading;
import rimeward.site.Sensor;

/**
 * The last that a sensor said. Its bus's thread puts, the control loop looks; neither waits for the other beyond a few copies. A read
 * that fails leaves the last good number to grow old, and so does one that hangs; older than {@link #GRACE_S} it is lost.
 */
final class Cell {
    private static final Logger LOG = LoggerFactory.getLogger(Cell.class);

    /** Longer than a few time-outs of a DHT22 in a row, shorter than a light tunnel takes to freeze. Common practice, no source. */
    static final double GRACE_S = 30;

    private final Sensor sensor;
    private final double graceS;
    private Slot airC = Slot.EMPTY;
    private Slot rhPercent = Slot.EMPTY;
    private boolean gone;

    /** A number and when it was taken, and why the last try gave none. */
    private record Slot(Reading last, long takenNs, Reading.Lost why) {
        private static final Slot EMPTY = new Slot(Reading.NO_ANSWER, 0, new Reading.Lost(Loss.NO_ANSWER));

        Slot after(Reading now, long nowNs) {
            if (now instanceof Reading.Lost lost) {
                return new Slot(last, takenNs, lost);
            }
            return new Slot(now, nowNs, new Reading.Lost(Loss.NO_ANSWER));
        }

        Reading at(long nowNs, double graceS) {
            if (!(last instanceof Reading.Value value)) {
                return last instanceof Reading.Lost ? why : last;
            }
            double ageS = (nowNs - takenNs) / 1e9;
            return ageS <= graceS ? new Reading.Value(value.value(), StrictMath.max(0, ageS)) : why;
        }
    }

    Cell(Sensor sensor) {
        this.sensor = sensor;
        graceS = StrictMath.min(GRACE_S, sensor.limits().maxAgeS());
    }

    synchronized void put(SensorReading now, long nowNs) {
        airC = airC.after(now.airC(), nowNs);
        rhPercent = rhPercent.after(now.rhPercent(), nowNs);
    }

    /** What to believe it said, with its age; told once in the log when it goes and once when it comes back. */
    synchronized SensorReading latch(long nowNs) {
        Reading air = airC.at(nowNs, graceS);
        Reading rh = sensor.hasHumidity() ? rhPercent.at(nowNs, graceS) : Reading.NOT_FITTED;
        boolean goneNow = air instanceof Reading.Lost || rh instanceof Reading.Lost;
        if (goneNow != gone) {
            gone = goneNow;
            tell(air, rh);
        }
        return new SensorReading(air, rh);
    }

    private void tell(Reading air, Reading rh) {
        if (gone) {
            LOG.warn(
                    "sensor {} gives no sound reading: temperature {}, humidity {}; look at its plug, its bus and the service's rights ({})",
                    sensor.id(),
                    air,
                    rh,
                    sensor.attached());
        } else {
            LOG.info("sensor {} is back", sensor.id());
        }
    }
}
