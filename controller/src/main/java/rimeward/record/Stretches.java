package rimeward.record;

import java.time.Instant;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import rimeward.core.judgement.Verdict;
import rimeward.core.reading.Signal;
import rimeward.core.tunnel.Stretch;
import rimeward.site.Site;

/**
 * Makes what a tunnel is learned from out of the record's frames, which come in order of time. Dark is by the clock, because the place is
 * not known: so late and so early that nowhere in the fifties of latitude the sun is up then, from October to April.
 */
public final class Stretches {
    private static final int QUARTER_S = Stretch.QUARTER_S;
    private static final int MINUTES = Stretch.MINUTES;
    private static final int MINUTE_S = 60;

    /** A longer hole in the record ends a stretch, s. A kept frame a minute is usual. */
    private static final long HOLE_S = 130;

    /** The air at a quarter's end is the mean of so long before it, s. Own choice: noise is less, and the air has not moved. */
    private static final long END_S = 200;

    private static final int WINTER_DUSK_H = 18;
    private static final int WINTER_DAWN_H = 6;
    private static final int DUSK_H = 21;
    private static final int DAWN_H = 5;

    private final Site site;
    private final double feltAfterS;
    private final List<Stretch> ended = new ArrayList<>();
    private @Nullable Growing growing;
    private @Nullable FrameRow last;

    public Stretches(Site site) {
        this.site = site;
        feltAfterS = Math.min(QUARTER_S, site.heater().deadTimeS());
    }

    /** Takes the next frame; one of other sensors or machines than the site's ends a stretch. */
    public void add(FrameRow row) {
        if (row.frame().senses().sensors().size() != site.sensors().size()
                || row.frame().senses().powersW().size() != site.machines().size()) {
            end();
            last = null;
            return;
        }
        FrameRow before = last;
        last = row;
        if (before == null || !follows(before, row)) {
            end();
            return;
        }
        Growing now = growing;
        if (now != null && now.sensors != trusted(row)) {
            end();
            now = null;
        }
        if (now != null) {
            now.add(before, row);
        } else if (epochS(before) / QUARTER_S != epochS(row) / QUARTER_S) { // a stretch begins where a quarter does
            growing = new Growing(epochS(row) / QUARTER_S * QUARTER_S, trusted(row));
        }
    }

    /** What has been found so far, what still goes on among it; the oldest first. */
    public List<Stretch> found() {
        List<Stretch> all = new ArrayList<>(ended);
        Optional.ofNullable(growing).flatMap(Growing::stretch).ifPresent(all::add);
        return all;
    }

    private void end() {
        Optional.ofNullable(growing).flatMap(Growing::stretch).ifPresent(ended::add);
        growing = null;
    }

    private boolean follows(FrameRow before, FrameRow row) {
        long lastedS = epochS(row) - epochS(before);
        return row.frame().tick().wall().trusted()
                && before.frame().tick().wall().trusted()
                && row.outageS() == 0
                && lastedS >= 0
                && lastedS <= HOLE_S
                && trusted(row) != 0
                && outsideC(row).isPresent()
                && outsideC(before).isPresent();
    }

    private static long epochS(FrameRow row) {
        return row.frame().tick().wall().epochS();
    }

    static boolean isDark(Site site, long epochS) {
        ZonedDateTime local = Instant.ofEpochSecond(epochS).atZone(site.zone());
        boolean winter = local.getMonthValue() >= 11 || local.getMonthValue() <= 2;
        return local.getHour() >= (winter ? WINTER_DUSK_H : DUSK_H)
                || local.getHour() < (winter ? WINTER_DAWN_H : DAWN_H);
    }

    /** Which inside sensors count, as bits. */
    private long trusted(FrameRow row) {
        long bits = 0;
        for (int i = 0; i < site.sensors().size(); i++) {
            if (site.sensors().get(i).place().isInside() && airC(row, i).isPresent()) {
                bits |= 1L << i;
            }
        }
        return bits;
    }

    private double insideC(FrameRow row) {
        double sum = 0;
        int count = 0;
        for (int i = 0; i < site.sensors().size(); i++) {
            OptionalDouble airC = site.sensors().get(i).place().isInside() ? airC(row, i) : OptionalDouble.empty();
            if (airC.isPresent()) {
                sum += airC.getAsDouble();
                count++;
            }
        }
        return sum / count;
    }

    private OptionalDouble outsideC(FrameRow row) {
        for (int i = 0; i < site.sensors().size(); i++) {
            if (!site.sensors().get(i).place().isInside() && airC(row, i).isPresent()) {
                return airC(row, i);
            }
        }
        return OptionalDouble.empty();
    }

    /** Without what is at odds with others: nothing can be learned of that. */
    private static OptionalDouble airC(FrameRow row, int sensor) {
        return row.airVerdicts().get(sensor) == Verdict.TRUSTED ? row.believedAirC(sensor) : OptionalDouble.empty();
    }

    /** A stretch as it grows. */
    private final class Growing {
        private final long startS;
        private final long sensors;
        private final List<Stretch.Quarter> quarters = new ArrayList<>();
        private double outsideKS;
        private final double[] heaterJ =
                new double[2 * MINUTES]; // this quarter, and what the sensors will feel in the next
        private final double[] dryerJ = new double[2 * MINUTES];
        private double endKS;
        private double endS;
        private double seenS;
        private boolean shut = true;

        Growing(long startS, long sensors) {
            this.startS = startS;
            this.sensors = sensors;
        }

        void add(FrameRow before, FrameRow row) {
            long fromS = epochS(before);
            long toS = epochS(row);
            long endsS = startS + (quarters.size() + 1L) * QUARTER_S;
            put(Math.max(fromS, startS), Math.min(toS, endsS), endsS, before, row);
            if (toS >= endsS) {
                close(endsS);
                put(endsS, toS, endsS + QUARTER_S, before, row);
            }
        }

        private void put(long fromS, long toS, long endsS, FrameRow before, FrameRow row) {
            double lastedS = (double) (toS - fromS);
            if (lastedS <= 0) {
                return;
            }
            outsideKS += (outsideC(before).orElseThrow() + outsideC(row).orElseThrow()) / 2 * lastedS;
            double sinceS = (double) (fromS - endsS + QUARTER_S) + feltAfterS;
            for (int i = 0; i < site.machines().size(); i++) {
                double powerW = Draw.powerW(site, before.closed(), row.frame(), i);
                switch (site.machines().get(i).role()) {
                    case HEATER_STAGE -> book(heaterJ, powerW, sinceS, lastedS);
                    case DRYER -> book(dryerJ, powerW, sinceS, lastedS);
                    case VENT_FAN -> shut &= !before.closed().has(i);
                }
            }
            shut &= row.frame().senses().doorOpen() != Signal.ON;
            seenS += lastedS;
            double lateS = Math.min(lastedS, (double) (toS - endsS + END_S));
            if (lateS > 0) {
                endKS += insideC(row) * lateS;
                endS += lateS;
            }
        }

        private void book(double[] eachJ, double powerW, double sinceS, double lastedS) {
            double atS = sinceS;
            double untilS = Math.min(sinceS + lastedS, 2.0 * QUARTER_S);
            while (powerW != 0 && atS < untilS) {
                int minute = (int) (atS / MINUTE_S);
                double nextS = Math.min(untilS, (minute + 1) * (double) MINUTE_S);
                eachJ[minute] += powerW * (nextS - atS);
                atS = nextS;
            }
        }

        /** Mean power of each minute; what is left belongs to the next quarter. */
        private List<Double> meansW(double[] eachJ) {
            List<Double> means = new ArrayList<>(MINUTES);
            for (int minute = 0; minute < MINUTES; minute++) {
                means.add(eachJ[minute] / MINUTE_S);
                eachJ[minute] = eachJ[minute + MINUTES];
                eachJ[minute + MINUTES] = 0;
            }
            return means;
        }

        private void close(long atS) {
            boolean dark = isDark(site, atS - QUARTER_S) && isDark(site, atS - 1);
            quarters.add(new Stretch.Quarter(
                    endKS / endS,
                    outsideKS / seenS,
                    meansW(heaterJ),
                    meansW(dryerJ),
                    dark,
                    SunClock.height(atS - QUARTER_S / 2, site.zone()),
                    shut));
            outsideKS = 0;
            endKS = 0;
            endS = 0;
            seenS = 0;
            shut = true;
        }

        Optional<Stretch> stretch() {
            return quarters.isEmpty() ? Optional.empty() : Optional.of(new Stretch(startS, quarters));
        }
    }
}
