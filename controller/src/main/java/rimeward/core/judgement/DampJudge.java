package rimeward.core.judgement;

import java.util.List;
import rimeward.air.MoistAir;
import rimeward.air.RelativeHumidity;
import rimeward.core.reading.Reading;
import rimeward.core.reading.Senses;
import rimeward.core.reading.SensorReading;
import rimeward.site.Sensor;
import rimeward.site.SensorLimits;
import rimeward.site.Site;

/** The judge's part for moisture: which humidities are believed, and how wet the air is by them. */
final class DampJudge {
    /** A capacitive sensor may read a little past its scale; farther is a fault, %. Common practice, no source. */
    private static final double MOST_PERCENT = 106;

    /** Below 1 % no outdoor or tunnel air exists; it is a fault value, %. Common practice, no source. */
    private static final double LEAST_PERCENT = 1;

    /** In saturated air a humidity may well stand still; only below this is that suspicious, %. Own choice. */
    private static final double SATURATED_PERCENT = 97;

    private static final double FROZEN_TIMES = 4;

    private final Sensor[] sensors;
    private final double pressurePa;

    DampJudge(Site site) {
        sensors = site.sensors().toArray(new Sensor[0]);
        pressurePa = MoistAir.pressurePa(site.tunnel().altitudeM());
    }

    /** Fills in the verdicts and tracks. */
    Damp judge(
            Senses senses,
            List<RhTrack> was,
            Verdict[] airVerdicts,
            Verdict[] rhVerdicts,
            RhTrack[] tracks,
            double dtS) {
        double wettestPercent = -1;
        double vapourPa = -1;
        for (int i = 0; i < rhVerdicts.length; i++) {
            SensorReading reading = senses.sensors().get(i);
            rhVerdicts[i] = Plausible.of(
                    reading.rhPercent(),
                    LEAST_PERCENT,
                    MOST_PERCENT,
                    sensors[i].limits().maxAgeS());
            tracks[i] = RhTrack.START;
            if (rhVerdicts[i].isTrusted()) {
                double rhPercent = ((Reading.Value) reading.rhPercent()).value();
                tracks[i] = was.get(i).seen(rhPercent, dtS);
                rhVerdicts[i] = overTime(tracks[i], sensors[i].limits());
            }
            if (rhVerdicts[i].isTrusted()
                    && airVerdicts[i].isTrusted()
                    && sensors[i].place().isInside()) {
                wettestPercent = StrictMath.max(wettestPercent, StrictMath.min(100, tracks[i].lastPercent()));
                vapourPa = StrictMath.max(vapourPa, vapourPa(reading));
            }
        }
        return vapourPa < 0
                ? Damp.UNSEEN
                : new Damp.Seen(
                        wettestPercent,
                        MoistAir.dewPointC(vapourPa),
                        MoistAir.humidityRatioKgPerKg(vapourPa, pressurePa));
    }

    OutsideDamp outside(SensorReading reading, Verdict rhVerdict) {
        return rhVerdict.isTrusted()
                ? new OutsideDamp.Seen(MoistAir.humidityRatioKgPerKg(vapourPa(reading), pressurePa))
                : OutsideDamp.UNSEEN;
    }

    private static double vapourPa(SensorReading reading) {
        double airC = ((Reading.Value) reading.airC()).value();
        double rhPercent = StrictMath.min(100, ((Reading.Value) reading.rhPercent()).value());
        return RelativeHumidity.vapourFromOverWaterPa(airC, rhPercent);
    }

    private static Verdict overTime(RhTrack track, SensorLimits limits) {
        boolean frozen =
                track.lastPercent() < SATURATED_PERCENT && track.heldForS() >= limits.frozenAfterS() * FROZEN_TIMES;
        return frozen ? Verdict.FROZEN : Verdict.TRUSTED;
    }
}
