package rimeward.core.outlook;

import java.util.OptionalDouble;
import rimeward.air.MoistAir;
import rimeward.core.judgement.Outside;
import rimeward.core.judgement.OutsideDamp;

/** What the tunnel's own sensor showed of the air outside at one moment, or that nothing was seen. */
public sealed interface OutsideAir {
    /**
     * It was seen, and believed.
     *
     * @param epochS when, s since 1970 UTC
     * @param airC temperature, °C
     * @param dewPointC dew point over water, °C, where humidity was seen
     */
    record Seen(long epochS, double airC, OptionalDouble dewPointC) implements OutsideAir {}

    record Unseen() implements OutsideAir {}

    OutsideAir UNSEEN = new Unseen();

    /**
     * What a judgement says of it.
     *
     * @param pressurePa of the air, as the judgement took it
     */
    static OutsideAir of(long epochS, Outside outside, double pressurePa) {
        return outside instanceof Outside.Seen seen
                ? new Seen(epochS, seen.airC(), dewPointC(seen.damp(), pressurePa))
                : UNSEEN;
    }

    private static OptionalDouble dewPointC(OutsideDamp damp, double pressurePa) {
        return damp instanceof OutsideDamp.Seen seen
                ? OptionalDouble.of(MoistAir.dewPointC(MoistAir.vapourPa(seen.humidityKgPerKg(), pressurePa)))
                : OptionalDouble.empty();
    }
}
