package rimeward.alert;

import rimeward.core.judgement.Damp;
import rimeward.core.judgement.Inside;
import rimeward.core.judgement.Judgement;
import rimeward.core.judgement.Verdict;
import rimeward.site.Drying;
import rimeward.site.Site;

/** What is said of a sensor that is not believed: why, and what control goes by meanwhile. */
final class SensorText {
    private SensorText() {}

    /** Whether either of a sensor's readings is doubted in this way. */
    static boolean isSo(AlertKind kind, Judgement judgement, int sensor) {
        return isSo(kind, judgement.airVerdicts().get(sensor))
                || isSo(kind, judgement.rhVerdicts().get(sensor));
    }

    private static boolean isSo(AlertKind kind, Verdict verdict) {
        return switch (verdict) {
            case TRUSTED, NOT_FITTED -> false;
            case LOST, TOO_OLD -> kind == AlertKind.SENSOR_LOST;
            case AT_ODDS, DISAGREES -> kind == AlertKind.SENSORS_DISAGREE;
            case OUT_OF_RANGE, TOO_FAST, FROZEN -> kind == AlertKind.SENSOR_DOUBTED;
        };
    }

    static String of(Site site, AlertKind kind, String sensor, Judgement judgement) {
        for (int i = 0; i < site.sensors().size(); i++) {
            if (site.sensors().get(i).id().equals(sensor)) {
                boolean inside = site.sensors().get(i).place().isInside();
                Verdict air = judgement.airVerdicts().get(i);
                return isSo(kind, air)
                        ? sensor + " (temperature) " + air.says() + ". " + air(inside, air, judgement)
                        : sensor + " (humidity) "
                                + judgement.rhVerdicts().get(i).says() + ". " + humidity(site, inside, judgement);
            }
        }
        return sensor + " is not believed.";
    }

    private static String air(boolean inside, Verdict air, Judgement judgement) {
        if (air == Verdict.AT_ODDS) {
            return "The coldest counts for the floor and the warmest for the hot limit. Look at all of them.";
        }
        if (!inside) {
            return "Control goes on without it.";
        }
        return judgement.inside() instanceof Inside.Seen
                ? othersCarryOn(judgement) + " with how much colder its bench usually is. Look at it."
                : "No other is left. Look at it.";
    }

    private static String othersCarryOn(Judgement judgement) {
        return judgement.inside() instanceof Inside.Seen seen && seen.benches().size() > 1
                ? "The others carry on, and reckon"
                : "The other carries on, and reckons";
    }

    private static String humidity(Site site, boolean inside, Judgement judgement) {
        if (!inside) {
            return "Control goes on without it.";
        }
        if (judgement.damp() instanceof Damp.Seen) {
            return "Control goes by the others.";
        }
        return site.drying() instanceof Drying.Dryer
                ? "No other is left, so the dryer runs by the clock."
                : "No other is left.";
    }
}
