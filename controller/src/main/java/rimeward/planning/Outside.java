package rimeward.planning;

import java.util.OptionalDouble;
import rimeward.air.MoistAir;
import rimeward.air.Saturation;
import rimeward.core.outlook.OutsideAir;
import rimeward.record.FrameRow;
import rimeward.site.Site;

/** The air outside as a kept frame has it. */
final class Outside {
    private Outside() {}

    /** By the first outside sensor that was believed. */
    static OutsideAir of(FrameRow row, Site site) {
        for (int i = 0; i < site.sensors().size(); i++) {
            OptionalDouble airC = row.believedAirC(i);
            if (!site.sensors().get(i).place().isInside() && airC.isPresent()) {
                return new OutsideAir.Seen(
                        row.frame().tick().wall().epochS(),
                        airC.getAsDouble(),
                        dewPointC(airC.getAsDouble(), row.believedRhPercent(i)));
            }
        }
        return OutsideAir.UNSEEN;
    }

    private static OptionalDouble dewPointC(double airC, OptionalDouble rhPercent) {
        return rhPercent.isPresent() && rhPercent.getAsDouble() > 0
                ? OptionalDouble.of(
                        MoistAir.dewPointC(Math.min(1, rhPercent.getAsDouble() / 100) * Saturation.overWaterPa(airC)))
                : OptionalDouble.empty();
    }
}
