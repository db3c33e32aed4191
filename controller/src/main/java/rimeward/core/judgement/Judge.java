package rimeward.core.judgement;

import java.util.Arrays;
import rimeward.core.reading.Frame;
import rimeward.core.reading.Reading;
import rimeward.core.reading.Senses;
import rimeward.core.reading.SensorReading;
import rimeward.core.reading.Signal;
import rimeward.site.Sensor;
import rimeward.site.SensorLimits;
import rimeward.site.Site;

/**
 * Decides how far each reading is believed, and what the believed ones say together. Pure: {@link #judge} is a function of
 * its arguments and of the site alone.
 */
public final class Judge {
    /** Neighbours that moved this far while a reading stood still show that it is frozen, K. Own choice. */
    private static final double MOVED_K = 0.7;

    /** With nobody to compare, standing still this many times as long counts as frozen. Own choice. */
    private static final double FROZEN_ALONE = 4;

    private final Sensor[] sensors; // an array: every tick walks it several times
    private final Disagreement disagreement;
    private final Habit habit;
    private final InsideJudge insideJudge;
    private final DampJudge dampJudge;

    public Judge(Site site) {
        sensors = site.sensors().toArray(new Sensor[0]);
        disagreement = new Disagreement(sensors);
        habit = new Habit(site, sensors);
        insideJudge = new InsideJudge(site, sensors, habit);
        dampJudge = new DampJudge(site);
    }

    /**
     * Judges one frame.
     *
     * @param dtS since the last tick, s
     */
    public Judged judge(JudgeState was, Frame frame, double dtS) {
        Senses senses = frame.senses();
        Verdict[] verdicts = new Verdict[sensors.length];
        AirTrack[] tracks = new AirTrack[sensors.length];
        AirTrack.Beat beat = AirTrack.Beat.of(dtS);
        Others others = Others.of(senses.sensors());
        for (int i = 0; i < verdicts.length; i++) {
            SensorLimits limits = sensors[i].limits();
            Reading reading = senses.sensors().get(i).airC();
            verdicts[i] = Plausible.of(reading, limits.leastC(), limits.mostC(), limits.maxAgeS());
            if (verdicts[i].isTrusted()) {
                double airC = ((Reading.Value) reading).value();
                double othersC = others.meanC(airC);
                tracks[i] = was.air().get(i).seen(airC, othersC, limits.rateKPerMin(), beat);
                verdicts[i] = overTime(tracks[i], limits, othersC);
            } else {
                tracks[i] = was.air().get(i).forgotten(); // what it said before is too old to compare with
            }
        }
        disagreement.judge(verdicts, tracks);
        double sinceLearnedS = was.sinceLearnedS() + dtS;
        if (sinceLearnedS >= Habit.EVERY_S) {
            habit.learn(verdicts, tracks);
            sinceLearnedS = 0;
        }
        Inside inside = insideJudge.judge(verdicts, tracks, was.blindForS(), dtS);
        Verdict[] rhVerdicts = new Verdict[sensors.length];
        RhTrack[] rhTracks = new RhTrack[sensors.length];
        Damp damp = dampJudge.judge(senses, was.rh(), verdicts, rhVerdicts, rhTracks, dtS);
        Judgement judgement = new Judgement(
                trust(inside, verdicts, rhVerdicts),
                inside,
                damp,
                outside(senses, verdicts, rhVerdicts),
                senses.tankFull() == Signal.ON,
                senses.doorOpen() == Signal.ON,
                Arrays.asList(verdicts),
                Arrays.asList(rhVerdicts));
        JudgeState next = new JudgeState(
                Arrays.asList(tracks),
                Arrays.asList(rhTracks),
                inside instanceof Inside.Unseen unseen ? unseen.forS() : 0,
                sinceLearnedS);
        return new Judged(judgement, next);
    }

    // ---- one reading

    private static Verdict overTime(AirTrack track, SensorLimits limits, double othersC) {
        if (track.doubtLeftS() > 0) {
            return Verdict.TOO_FAST;
        }
        boolean othersMoved = StrictMath.abs(othersC - track.othersAtHoldC()) >= MOVED_K;
        double frozenAfterS = limits.frozenAfterS() * (othersMoved ? 1 : FROZEN_ALONE);
        return track.heldForS() >= frozenAfterS ? Verdict.FROZEN : Verdict.TRUSTED;
    }

    private Outside outside(Senses senses, Verdict[] verdicts, Verdict[] rhVerdicts) {
        for (int i = 0; i < verdicts.length; i++) {
            if (!isInside(i) && verdicts[i].isTrusted()) {
                SensorReading reading = senses.sensors().get(i);
                return new Outside.Seen(
                        ((Reading.Value) reading.airC()).value(), dampJudge.outside(reading, rhVerdicts[i]));
            }
        }
        return Outside.UNSEEN;
    }

    private static Trust trust(Inside inside, Verdict[] verdicts, Verdict[] rhVerdicts) {
        if (inside instanceof Inside.Unseen) {
            return Trust.BLIND;
        }
        for (int i = 0; i < verdicts.length; i++) {
            if (verdicts[i].isDoubted() || rhVerdicts[i].isDoubted()) {
                return Trust.REDUCED;
            }
        }
        return Trust.FULL;
    }

    private boolean isInside(int sensor) {
        return sensors[sensor].place().isInside();
    }
}
