package rimeward.record;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import rimeward.air.MoistAir;
import rimeward.air.RelativeHumidity;
import rimeward.core.judgement.Verdict;
import rimeward.core.reading.Reading;
import rimeward.core.reading.Signal;
import rimeward.core.tunnel.DampQuarter;
import rimeward.core.tunnel.Stretch;
import rimeward.site.Site;

/**
 * Makes what a tunnel's damp is learned from out of the record's frames, which come in order of time. A quarter of an hour counts where
 * humidity was trusted inside and outside for most of it; others are left out.
 */
public final class DampQuarters {
    /** Frames farther apart say nothing of the time between, s. A kept frame a minute is usual. */
    private static final double LONGEST_S = 130;

    /** So much of a quarter must be known, s. Own choice. */
    private static final double LEAST_S = 600;

    private final Site site;
    private final double pressurePa;
    private final List<DampQuarter> found = new ArrayList<>();
    private long quarter = Long.MIN_VALUE;
    private long lastEpochS = Long.MIN_VALUE / 2;
    private double seenS;
    private double airKS;
    private double insideS;
    private double outsideS;
    private double ranS;
    private boolean shut;

    public DampQuarters(Site site) {
        this.site = site;
        pressurePa = MoistAir.pressurePa(site.tunnel().altitudeM());
        begin(Long.MIN_VALUE);
    }

    /** Takes the next frame; one of other sensors or machines than the site's, or of an untrusted clock, counts for nothing. */
    public void add(FrameRow row) {
        boolean fits = row.frame().senses().sensors().size() == site.sensors().size()
                && row.frame().senses().powersW().size() == site.machines().size()
                && row.frame().tick().wall().trusted();
        if (!fits) {
            return;
        }
        long epochS = row.frame().tick().wall().epochS();
        double lastedS = (double) (epochS - lastEpochS);
        lastEpochS = epochS;
        if (Math.floorDiv(epochS, Stretch.QUARTER_S) != quarter) {
            end();
            begin(Math.floorDiv(epochS, Stretch.QUARTER_S));
        }
        if (lastedS > 0 && lastedS <= LONGEST_S) {
            book(row, lastedS);
        }
    }

    /** The quarters that are over, the oldest first. */
    public List<DampQuarter> found() {
        return List.copyOf(found);
    }

    private void begin(long next) {
        quarter = next;
        seenS = 0;
        airKS = 0;
        insideS = 0;
        outsideS = 0;
        ranS = 0;
        shut = true;
    }

    private void end() {
        if (seenS < LEAST_S) {
            return;
        }
        long fromS = quarter * Stretch.QUARTER_S;
        boolean dark = Stretches.isDark(site, fromS) && Stretches.isDark(site, fromS + Stretch.QUARTER_S - 1);
        found.add(new DampQuarter(
                fromS, airKS / seenS, insideS / seenS, outsideS / seenS, Math.min(1, ranS / seenS), dark, shut));
    }

    private void book(FrameRow row, double lastedS) {
        shut &= row.frame().senses().doorOpen() != Signal.ON;
        for (int i = 0; i < site.machines().size(); i++) {
            switch (site.machines().get(i).role()) {
                case DRYER -> ranS += ranShare(row, i) * lastedS;
                case VENT_FAN -> shut &= !row.closed().has(i);
                case HEATER_STAGE -> {}
            }
        }
        double sumC = 0;
        double sumKgPerKg = 0;
        int inside = 0;
        OptionalDouble outside = OptionalDouble.empty();
        for (int i = 0; i < site.sensors().size(); i++) {
            OptionalDouble damp = humidityKgPerKg(row, i);
            if (damp.isEmpty()) {
                continue;
            }
            if (site.sensors().get(i).place().isInside()) {
                sumC += row.believedAirC(i).orElseThrow();
                sumKgPerKg += damp.getAsDouble();
                inside++;
            } else {
                outside = damp;
            }
        }
        if (inside > 0 && outside.isPresent()) {
            seenS += lastedS;
            airKS += sumC / inside * lastedS;
            insideS += sumKgPerKg / inside * lastedS;
            outsideS += outside.getAsDouble() * lastedS;
        }
    }

    /** A meter sees the dryer's own humidistat stop it. */
    private double ranShare(FrameRow row, int machine) {
        Reading shown = row.frame().senses().powersW().get(machine);
        if (shown instanceof Reading.Value value) {
            return value.value() / site.machines().get(machine).ratedW();
        }
        return row.closed().has(machine) ? 1 : 0;
    }

    private OptionalDouble humidityKgPerKg(FrameRow row, int sensor) {
        OptionalDouble airC = row.believedAirC(sensor);
        OptionalDouble rhPercent = row.believedRhPercent(sensor);
        boolean trusted = row.airVerdicts().get(sensor) == Verdict.TRUSTED
                && row.rhVerdicts().get(sensor) == Verdict.TRUSTED;
        return trusted && airC.isPresent() && rhPercent.isPresent()
                ? OptionalDouble.of(MoistAir.humidityRatioKgPerKg(
                        RelativeHumidity.vapourFromOverWaterPa(
                                airC.getAsDouble(), Math.min(100, rhPercent.getAsDouble())),
                        pressurePa))
                : OptionalDouble.empty();
    }
}
