package rimeward.sim.device;

import rimeward.air.MoistAir;
import rimeward.air.RelativeHumidity;
import rimeward.core.reading.Reading;
import rimeward.core.reading.SensorReading;
import rimeward.sim.fault.FaultClock;
import rimeward.sim.fault.FaultKind;
import rimeward.sim.fault.SeededStream;
import rimeward.sim.world.Truth;

/** One sensor: what it should see, what its vices make of that, and what its faults make of that. For the world's thread. */
final class SimSensor {
    /** A sensor's own element answers within this, so a reading is never older, s. */
    private static final double AGE_S = 1;

    private static final double SPIKE_CHANCE = 0.02;
    private static final double DAY_S = 86_400;

    private final String id;
    private final Spot spot;
    private final boolean hasHumidity;
    private final SensorVices vices;
    private final SeededStream luck;
    private final double driftKPerS;
    private final double stepsPerK;
    private final double stepsPerPercent;
    private double shareForS;
    private double share;
    private double airC;
    private double rhPercent;
    private double driftK;
    private SensorReading last;

    SimSensor(String id, Spot spot, boolean hasHumidity, SensorVices vices, SeededStream luck, Truth truth) {
        this.id = id;
        this.spot = spot;
        this.hasHumidity = hasHumidity;
        this.vices = vices;
        this.luck = luck;
        driftKPerS = vices.driftKPerDay() / DAY_S;
        stepsPerK = 1 / vices.resolutionK();
        stepsPerPercent = 1 / vices.resolutionPercent();
        airC = spot.airC(truth);
        rhPercent = spot.rhPercent(truth);
        last = new SensorReading(value(airC), hasHumidity ? value(rhPercent) : Reading.NOT_FITTED);
    }

    SensorReading read(Truth truth, FaultClock faults, double dtS) {
        double share = share(dtS);
        airC += (spot.airC(truth) - airC) * share;
        if (hasHumidity) {
            rhPercent += (spot.rhPercent(truth) - rhPercent) * share;
        }
        driftK += driftKPerS * dtS;
        if (faults.isCalm()) {
            last = new SensorReading(
                    value(shownC(seenC())), hasHumidity ? value(shownPercent(seenPercent())) : Reading.NOT_FITTED);
            return last;
        }
        return readFaulty(truth, faults, dtS);
    }

    /** How far it follows in this time; worked out again only when ticks change their length. */
    private double share(double dtS) {
        if (dtS != shareForS) {
            shareForS = dtS;
            share = dtS > 0 ? dtS / (vices.lagS() + dtS) : 0; // a second look at one moment shows the same
        }
        return share;
    }

    private SensorReading readFaulty(Truth truth, FaultClock faults, double dtS) {
        driftK += faults.magnitude(FaultKind.SENSOR_DRIFT, id) * dtS / DAY_S;
        if (isLost(faults)) {
            return new SensorReading(Reading.NO_ANSWER, hasHumidity ? Reading.NO_ANSWER : Reading.NOT_FITTED);
        }
        if (!faults.isActive(FaultKind.SENSOR_FROZEN, id)) {
            last = new SensorReading(air(truth, faults), humidity(faults));
        }
        return last;
    }

    private boolean isLost(FaultClock faults) {
        return faults.isActive(FaultKind.SENSOR_LOST, id)
                || (spot instanceof Spot.Outside && faults.isActive(FaultKind.OUTSIDE_SENSOR_LOST));
    }

    private Reading air(Truth truth, FaultClock faults) {
        double seenC = seenC();
        if (faults.isActive(FaultKind.SENSOR_WET, id)) {
            seenC = wetBulbC(truth);
        }
        seenC += faults.magnitude(FaultKind.SENSOR_OFFSET, id);
        if (faults.isActive(FaultKind.SENSOR_NOISE, id)) {
            seenC += luck.bell() * faults.magnitude(FaultKind.SENSOR_NOISE, id);
        }
        if (faults.isActive(FaultKind.SENSOR_SPIKE, id) && luck.nextDouble() < SPIKE_CHANCE) {
            seenC += luck.between(-1, 1) * faults.magnitude(FaultKind.SENSOR_SPIKE, id);
        }
        return value(shownC(seenC));
    }

    private double seenC() {
        return airC + vices.offsetK() + driftK + luck.bell() * vices.noiseK();
    }

    private double shownC(double seenC) {
        return Math.rint(seenC * stepsPerK) * vices.resolutionK();
    }

    private Reading humidity(FaultClock faults) {
        if (!hasHumidity) {
            return Reading.NOT_FITTED;
        }
        if (faults.isActive(FaultKind.HUMIDITY_LOST, id)) {
            return Reading.NO_ANSWER;
        }
        double seenPercent = seenPercent();
        if (faults.isActive(FaultKind.SENSOR_WET, id)) {
            seenPercent = 100;
        }
        return value(shownPercent(seenPercent));
    }

    private double seenPercent() {
        return rhPercent + vices.offsetPercent() + luck.bell() * vices.noisePercent();
    }

    private double shownPercent(double seenPercent) {
        double inScale = Math.max(0, Math.min(100, seenPercent));
        return Math.rint(inScale * stepsPerPercent) * vices.resolutionPercent();
    }

    private double wetBulbC(Truth truth) {
        double vapourPa = RelativeHumidity.vapourFromOverWaterPa(airC, StrictMath.min(100, rhPercent));
        return MoistAir.wetBulbC(airC, MoistAir.humidityRatioKgPerKg(vapourPa, truth.pressurePa()), truth.pressurePa());
    }

    private static Reading value(double value) {
        return new Reading.Value(value, AGE_S);
    }
}
