package rimeward.core.judgement;

import rimeward.site.Sensor;
import rimeward.site.Site;

/**
 * How much warmer or colder each bench usually is than all of them together. It is learned slowly while the air is cool, so
 * that the cold corner is still reckoned with, by the others, when its own sensor is lost.
 */
final class Habit {
    /** So often a little is learned, s: every tick would be no better, and dearer. */
    static final double EVERY_S = 60;

    /** Time constant of learning, s: half a day, so that neither a gust nor a lying sensor teaches much. Own choice. */
    private static final double PACE_S = 43_200;

    /** No bench is taken to differ by more, K. Own choice. */
    private static final double MOST_K = 3;

    /** Learned only this near to the floor, K: by day the sun makes other differences. Own choice. */
    private static final double COOL_K = 6;

    private final Sensor[] sensors;
    private final double coolC;

    Habit(Site site, Sensor[] sensors) {
        this.sensors = sensors;
        coolC = site.floorC() + COOL_K;
    }

    /** Where the believed benches together stand, each one's habit taken off, °C. At least one must be believed. */
    double commonC(Verdict[] verdicts, AirTrack[] tracks) {
        double sumC = 0;
        int count = 0;
        for (int i = 0; i < verdicts.length; i++) {
            if (sensors[i].place().isInside() && verdicts[i].isTrusted()) {
                sumC += tracks[i].lastC() - tracks[i].usualK();
                count++;
            }
        }
        return sumC / count;
    }

    /** Learns from those that are sound, where there are at least two to compare; replaces their tracks. */
    void learn(Verdict[] verdicts, AirTrack[] tracks) {
        int sound = 0;
        for (int i = 0; i < verdicts.length; i++) {
            if (sensors[i].place().isInside() && verdicts[i].isTrusted()) {
                if (verdicts[i] != Verdict.TRUSTED) {
                    return;
                }
                sound++;
            }
        }
        double commonC = sound < 2 ? Double.POSITIVE_INFINITY : commonC(verdicts, tracks);
        for (int i = 0; i < verdicts.length && commonC <= coolC; i++) {
            if (sensors[i].place().isInside() && verdicts[i].isTrusted()) {
                double wasK = tracks[i].usualK();
                double nowK = wasK + (tracks[i].lastC() - commonC - wasK) * EVERY_S / PACE_S;
                tracks[i] = tracks[i].usually(bounded(nowK));
            }
        }
    }

    static double bounded(double usualK) {
        return StrictMath.max(-MOST_K, StrictMath.min(MOST_K, usualK));
    }
}
