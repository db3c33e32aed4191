package rimeward.page;

import java.util.OptionalDouble;
import rimeward.air.MoistAir;
import rimeward.air.RelativeHumidity;
import rimeward.record.Draw;
import rimeward.record.FrameRow;
import rimeward.site.RelaySet;
import rimeward.site.Site;

/** A kept frame as this site reads it, the same way as control judged it then. A row of other sensors or machines tells nothing. */
record RowView(Site site, FrameRow row) {
    private boolean hasSensors() {
        return row.airVerdicts().size() == site.sensors().size();
    }

    private boolean isInside(int sensor) {
        return site.sensors().get(sensor).place().isInside();
    }

    /** The lowest believed reading inside less its sensor's uncertainty, °C. */
    OptionalDouble coldestC() {
        int sensor = coldest();
        return sensor < 0 ? OptionalDouble.empty() : OptionalDouble.of(lessUncertaintyC(sensor));
    }

    /** Which sensor that is; negative where none is believed. */
    int coldest() {
        int coldest = -1;
        for (int i = 0; hasSensors() && i < site.sensors().size(); i++) {
            if (isInside(i)
                    && row.believedAirC(i).isPresent()
                    && (coldest < 0 || lessUncertaintyC(i) < lessUncertaintyC(coldest))) {
                coldest = i;
            }
        }
        return coldest;
    }

    private double lessUncertaintyC(int sensor) {
        return row.believedAirC(sensor).orElseThrow()
                - site.sensors().get(sensor).uncertaintyK();
    }

    /** Of the first outside sensor that is believed, °C. */
    OptionalDouble outsideC() {
        int sensor = hasSensors() ? row.firstBelievedOutside(site) : -1;
        return sensor < 0 ? OptionalDouble.empty() : row.believedAirC(sensor);
    }

    /** Where it is wettest inside, %. */
    OptionalDouble rhPercent() {
        double mostPercent = -1;
        for (int i = 0; hasSensors() && i < site.sensors().size(); i++) {
            if (isDampKnown(i)) {
                mostPercent = StrictMath.max(
                        mostPercent,
                        StrictMath.min(100, row.believedRhPercent(i).orElseThrow()));
            }
        }
        return mostPercent < 0 ? OptionalDouble.empty() : OptionalDouble.of(mostPercent);
    }

    /** The highest inside, °C. */
    OptionalDouble dewPointC() {
        double mostPa = -1;
        for (int i = 0; hasSensors() && i < site.sensors().size(); i++) {
            if (isDampKnown(i)) {
                double rhPercent = StrictMath.min(100, row.believedRhPercent(i).orElseThrow());
                double vapourPa = RelativeHumidity.vapourFromOverWaterPa(
                        row.believedAirC(i).orElseThrow(), rhPercent);
                mostPa = StrictMath.max(mostPa, vapourPa);
            }
        }
        return mostPa <= 0 ? OptionalDouble.empty() : OptionalDouble.of(MoistAir.dewPointC(mostPa));
    }

    private boolean isDampKnown(int sensor) {
        return isInside(sensor)
                && row.believedAirC(sensor).isPresent()
                && row.believedRhPercent(sensor).isPresent();
    }

    /** What these machines draw, by meter where there is one, else by their plates, W. */
    double powerW(RelaySet machines) {
        double sumW = 0;
        for (int i = 0; i < site.machines().size(); i++) {
            sumW += machines.has(i) ? Draw.powerW(site, row.closed(), row.frame(), i) : 0;
        }
        return sumW;
    }
}
