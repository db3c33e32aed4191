package rimeward.planning;

import java.util.OptionalDouble;
import rimeward.air.MoistAir;
import rimeward.air.RelativeHumidity;
import rimeward.core.outlook.OutsideAir;
import rimeward.record.FrameRow;
import rimeward.site.Site;

/** The air outside as a kept frame has it. */
final class Outside {
    private Outside() {}

    /** By the first outside sensor that was believed. */
    static OutsideAir of(FrameRow row, Site site) {
        int sensor = row.firstBelievedOutside(site);
        if (sensor < 0) {
            return OutsideAir.UNSEEN;
        }
        double airC = row.believedAirC(sensor).orElseThrow();
        return new OutsideAir.Seen(
                row.frame().tick().wall().epochS(), airC, dewPointC(airC, row.believedRhPercent(sensor)));
    }

    private static OptionalDouble dewPointC(double airC, OptionalDouble rhPercent) {
        return rhPercent.isPresent() && rhPercent.getAsDouble() > 0
                ? OptionalDouble.of(MoistAir.dewPointC(
                        RelativeHumidity.vapourFromOverWaterPa(airC, Math.min(100, rhPercent.getAsDouble()))))
                : OptionalDouble.empty();
    }
}
