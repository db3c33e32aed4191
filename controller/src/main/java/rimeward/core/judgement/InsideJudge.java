package rimeward.core.judgement;

import java.util.Arrays;
import java.util.List;
import rimeward.site.Sensor;
import rimeward.site.Site;

/** What the believed inside readings say together, and what they say of a bench whose own sensor is lost. */
final class InsideJudge {
    private final Sensor[] sensors;
    private final double hotC;
    private final Habit habit;

    InsideJudge(Site site, Sensor[] sensors, Habit habit) {
        this.sensors = sensors;
        this.habit = habit;
        hotC = site.targets().hotC();
    }

    Inside judge(Verdict[] verdicts, AirTrack[] tracks, double blindForS, double dtS) {
        double hottestC = Double.NEGATIVE_INFINITY;
        double sumC = 0;
        double sumKPerS = 0;
        int count = 0;
        Coldest coldest = new Coldest(verdicts.length);
        for (int i = 0; i < verdicts.length; i++) {
            if (isInside(i) && verdicts[i].isTrusted()) {
                AirTrack track = tracks[i];
                coldest.meet(i, track.lastC() - sensors[i].uncertaintyK(), track.slopeKPerS());
                hottestC = StrictMath.max(hottestC, track.lastC());
                sumC += track.lastC();
                sumKPerS += track.slopeKPerS();
                count++;
            }
        }
        if (count == 0) {
            return new Inside.Unseen(blindForS + dtS, somethingHot(verdicts, tracks));
        }
        reckonWithLost(coldest, verdicts, tracks, sumKPerS / count);
        return new Inside.Seen(coldest.lowestC, sumC / count, hottestC, coldest.sensor, coldest.benches());
    }

    /** A bench whose sensor is lost still counts where it would be the coldest by its habit; never as a comfort. */
    private void reckonWithLost(Coldest coldest, Verdict[] verdicts, AirTrack[] tracks, double slopeKPerS) {
        for (int i = 0; i < verdicts.length; i++) {
            if (isInside(i) && !verdicts[i].isTrusted() && tracks[i].usualK() < 0) {
                double lowestC = habit.commonC(verdicts, tracks) + tracks[i].usualK() - sensors[i].uncertaintyK();
                if (lowestC < coldest.lowestC) {
                    coldest.meet(i, lowestC, slopeKPerS);
                }
            }
        }
    }

    /** The benches of one tick, and the coldest of them. */
    private static final class Coldest {
        private final Inside.Bench[] benches;
        private int count;
        private int sensor;
        private double lowestC = Double.POSITIVE_INFINITY;

        Coldest(int most) {
            benches = new Inside.Bench[most];
        }

        void meet(int at, double benchC, double slopeKPerS) {
            benches[count++] = new Inside.Bench(benchC, slopeKPerS);
            if (benchC < lowestC) {
                lowestC = benchC;
                sensor = at;
            }
        }

        List<Inside.Bench> benches() {
            return Arrays.asList(benches).subList(0, count);
        }
    }

    /** Blind, the hot limit is judged by whatever still moves: a frozen or absent reading says nothing. */
    private boolean somethingHot(Verdict[] verdicts, AirTrack[] tracks) {
        for (int i = 0; i < verdicts.length; i++) {
            boolean moves = verdicts[i] == Verdict.TOO_FAST || verdicts[i] == Verdict.DISAGREES;
            if (isInside(i) && moves && tracks[i].lastC() >= hotC) {
                return true;
            }
        }
        return false;
    }

    private boolean isInside(int sensor) {
        return sensors[sensor].place().isInside();
    }
}
