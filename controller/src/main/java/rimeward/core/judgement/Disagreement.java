package rimeward.core.judgement;

import java.util.Arrays;
import rimeward.site.Sensor;

/**
 * Readings held against each other: while more than half of the inside sensors agree, the others are not believed. Where no
 * such majority is left (two against one another, two pairs, three that all differ) nobody can tell which is right: then all
 * are believed as far as it is safe, the coldest for the floor and the warmest for the hot limit.
 */
final class Disagreement {
    private final Sensor[] sensors;

    Disagreement(Sensor[] sensors) {
        this.sensors = sensors;
    }

    void judge(Verdict[] verdicts, AirTrack[] tracks) {
        double leastC = Double.POSITIVE_INFINITY;
        double mostC = Double.NEGATIVE_INFINITY;
        double limitK = Double.POSITIVE_INFINITY;
        int count = 0;
        for (int i = 0; i < verdicts.length; i++) {
            if (counts(verdicts, i)) {
                leastC = StrictMath.min(leastC, tracks[i].lastC());
                mostC = StrictMath.max(mostC, tracks[i].lastC());
                limitK = StrictMath.min(limitK, sensors[i].limits().disagreementK());
                count++;
            }
        }
        if (count >= 2 && mostC - leastC > limitK) {
            single(verdicts, tracks, sortedC(verdicts, tracks, count));
        }
    }

    private void single(Verdict[] verdicts, AirTrack[] tracks, double[] sortedC) {
        double lowerMiddleC = sortedC[(sortedC.length - 1) / 2];
        double upperMiddleC = sortedC[sortedC.length / 2];
        boolean[] far = new boolean[verdicts.length];
        int near = 0;
        for (int i = 0; i < verdicts.length; i++) {
            if (counts(verdicts, i)) {
                double airC = tracks[i].lastC();
                double apartK = StrictMath.max(upperMiddleC - airC, airC - lowerMiddleC);
                far[i] = apartK > sensors[i].limits().disagreementK();
                near += far[i] ? 0 : 1;
            }
        }
        if (near == sortedC.length) {
            return;
        }
        boolean majority = 2 * near > sortedC.length;
        for (int i = 0; i < verdicts.length; i++) {
            if (counts(verdicts, i)) {
                verdicts[i] = !majority ? Verdict.AT_ODDS : far[i] ? Verdict.DISAGREES : verdicts[i];
            }
        }
    }

    private double[] sortedC(Verdict[] verdicts, AirTrack[] tracks, int count) {
        double[] sorted = new double[count];
        int next = 0;
        for (int i = 0; i < verdicts.length; i++) {
            if (counts(verdicts, i)) {
                sorted[next++] = tracks[i].lastC();
            }
        }
        Arrays.sort(sorted);
        return sorted;
    }

    private boolean counts(Verdict[] verdicts, int sensor) {
        return sensors[sensor].place().isInside() && verdicts[sensor].isTrusted();
    }
}
