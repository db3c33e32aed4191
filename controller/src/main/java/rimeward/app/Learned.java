package rimeward.app;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import rimeward.adapter.journal.RecordFile;
import rimeward.air.MoistAir;
import rimeward.air.Saturation;
import rimeward.core.outlook.Course;
import rimeward.core.outlook.CourseMaker;
import rimeward.core.outlook.Forecast;
import rimeward.core.outlook.ForecastErrors;
import rimeward.core.outlook.NightDiary;
import rimeward.core.outlook.OutsideAir;
import rimeward.core.outlook.SunTimes;
import rimeward.core.tunnel.Lesson;
import rimeward.core.tunnel.TunnelEstimate;
import rimeward.core.tunnel.TunnelFit;
import rimeward.record.FrameRow;
import rimeward.record.Stretches;
import rimeward.service.NightsAhead;
import rimeward.site.Site;

/**
 * What the record of the last weeks teaches: of the tunnel, and of the nights outside.
 *
 * @param estimate learned, or assumed while there are too few nights
 */
record Learned(TunnelEstimate estimate, NightDiary diary, SunTimes sun) {
    /** Older frames tell of another season, days. Own choice. */
    private static final int DAYS = 45;

    private static final long DAY_MS = 86_400_000;

    /** The diary needs no more than a look in so many seconds. */
    private static final long LOOK_S = 600;

    static Learned from(Path record, Site site, long nowS) {
        SunTimes sun = NightsAhead.sun(site, nowS);
        if (!Files.isRegularFile(record)) {
            return new Learned(TunnelEstimate.assumed(site), NightDiary.EMPTY, sun);
        }
        Stretches stretches = new Stretches(site);
        Diarist diarist = new Diarist(site, sun);
        RecordFile.eachFrameSince(record, nowS * 1000 - DAYS * DAY_MS, row -> {
            if (row.frame().tick().wall().epochMs() <= nowS * 1000) {
                stretches.add(row);
                diarist.add(row);
            }
        });
        TunnelEstimate estimate = TunnelFit.of(site, stretches.found()) instanceof Lesson.Learned lesson
                ? lesson.estimate()
                : TunnelEstimate.assumed(site);
        return new Learned(estimate, diarist.diary, sun);
    }

    /** The next day outside; empty where nothing at all is known. */
    Optional<Course> course(long nowS, OutsideAir now, Optional<Forecast> forecast) {
        return new CourseMaker(sun).from(nowS, now, forecast, ForecastErrors.USUAL, diary);
    }

    /** Writes the diary from frames. */
    private static final class Diarist {
        private final Site site;
        private final SunTimes sun;
        private NightDiary diary = NightDiary.EMPTY;
        private long lookedS = Long.MIN_VALUE / 2;

        Diarist(Site site, SunTimes sun) {
            this.site = site;
            this.sun = sun;
        }

        void add(FrameRow row) {
            long epochS = row.frame().tick().wall().epochS();
            boolean sameSensors =
                    row.frame().senses().sensors().size() == site.sensors().size();
            if (!sameSensors || !row.frame().tick().wall().trusted() || epochS < lookedS + LOOK_S) {
                return;
            }
            for (int i = 0; i < site.sensors().size(); i++) {
                OptionalDouble airC = row.believedAirC(i);
                if (!site.sensors().get(i).place().isInside() && airC.isPresent()) {
                    lookedS = epochS;
                    diary = diary.after(
                            new OutsideAir.Seen(
                                    epochS,
                                    airC.getAsDouble(),
                                    dewPointC(airC.getAsDouble(), row.believedRhPercent(i))),
                            sun);
                    return;
                }
            }
        }

        private static OptionalDouble dewPointC(double airC, OptionalDouble rhPercent) {
            return rhPercent.isPresent() && rhPercent.getAsDouble() > 0
                    ? OptionalDouble.of(MoistAir.dewPointC(
                            Math.min(1, rhPercent.getAsDouble() / 100) * Saturation.overWaterPa(airC)))
                    : OptionalDouble.empty();
        }
    }
}
