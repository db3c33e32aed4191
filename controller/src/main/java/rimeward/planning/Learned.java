package rimeward.planning;

import java.util.ArrayList;
import java.util.List;
import rimeward.core.outlook.NightDiary;
import rimeward.core.outlook.OutsideAir;
import rimeward.core.outlook.SunTimes;
import rimeward.core.tunnel.Lesson;
import rimeward.core.tunnel.Stretch;
import rimeward.core.tunnel.TunnelEstimate;
import rimeward.core.tunnel.TunnelFit;
import rimeward.port.Past;
import rimeward.record.FrameRow;
import rimeward.record.Stretches;
import rimeward.site.Site;

/**
 * What the record of the last weeks teaches: of the tunnel, and of the nights outside.
 *
 * @param estimate learned, or assumed while there are too few nights
 * @param stretches what the tunnel was learned from
 * @param outside the air of the last two days, a look every ten minutes, the oldest first
 */
public record Learned(
        Lesson lesson,
        TunnelEstimate estimate,
        List<Stretch> stretches,
        NightDiary diary,
        List<OutsideAir.Seen> outside,
        SunTimes sun) {
    /** Older frames tell of another season, days. Own choice. */
    private static final int DAYS = 45;

    private static final long DAY_S = 86_400;

    /** The diary needs no more than a look in so many seconds. */
    private static final long LOOK_S = 600;

    /** Nothing: what the settings say of the tunnel, and no night outside. */
    static Learned nothing(Site site, SunTimes sun) {
        return new Learned(
                new Lesson.TooFew(0, TunnelFit.LEAST_DAYS),
                TunnelEstimate.assumed(site),
                List.of(),
                NightDiary.EMPTY,
                List.of(),
                sun);
    }

    /** By all frames until now. */
    public static Learned from(Past past, Site site, long nowS) {
        SunTimes sun = SunTimes.of(site, nowS);
        Stretches stretches = new Stretches(site);
        Diarist diarist = new Diarist(site, sun, nowS - 2 * DAY_S);
        past.eachFrame((nowS - DAYS * DAY_S) * 1000, Long.MAX_VALUE, Integer.MAX_VALUE, row -> {
            if (row.frame().tick().wall().epochS() <= nowS) {
                stretches.add(row);
                diarist.add(row);
            }
        });
        List<Stretch> found = stretches.found();
        Lesson lesson = TunnelFit.of(site, found);
        TunnelEstimate estimate =
                lesson instanceof Lesson.Learned learned ? learned.estimate() : TunnelEstimate.assumed(site);
        return new Learned(lesson, estimate, found, diarist.diary, List.copyOf(diarist.outside), sun);
    }

    /** Writes the diary from frames. */
    private static final class Diarist {
        private final Site site;
        private final SunTimes sun;
        private final long outsideFromS;
        private final List<OutsideAir.Seen> outside = new ArrayList<>();
        private NightDiary diary = NightDiary.EMPTY;
        private long lookedS = Long.MIN_VALUE / 2;

        Diarist(Site site, SunTimes sun, long outsideFromS) {
            this.site = site;
            this.sun = sun;
            this.outsideFromS = outsideFromS;
        }

        void add(FrameRow row) {
            long epochS = row.frame().tick().wall().epochS();
            if (Evening.isOf(row, site)
                    && epochS >= lookedS + LOOK_S
                    && Outside.of(row, site) instanceof OutsideAir.Seen seen) {
                lookedS = epochS;
                diary = diary.after(seen, sun);
                if (epochS >= outsideFromS) {
                    outside.add(seen);
                }
            }
        }
    }
}
