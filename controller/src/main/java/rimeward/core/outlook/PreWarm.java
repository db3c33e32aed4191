package rimeward.core.outlook;

import rimeward.core.tunnel.Figure;
import rimeward.core.tunnel.TunnelEstimate;
import rimeward.site.Tariff;

/** Whether it pays to warm the tunnel while electricity is cheap. Advice only: control goes on as ever. */
public sealed interface PreWarm {
    /** A kilowatt-hour costs the same all night. */
    record NotPriced() implements PreWarm {}

    /** Tried, and not worth it: the tunnel loses the warmth before it is wanted. */
    record NotWorth() implements PreWarm {}

    /**
     * Worth it, by the model.
     *
     * @param fromEpochS warm from here, s since 1970 UTC
     * @param toEpochS to here, when the price rises
     * @param byK so much above the floor band, K
     * @param saved money, in the tariff's currency; warmth that is left at the end is not counted
     */
    record Worth(long fromEpochS, long toEpochS, double byK, Figure saved) implements PreWarm {}

    static PreWarm of(Tonight night, TunnelEstimate estimate, Nights usual) {
        return night.site().tariff() instanceof Tariff.Flat
                ? new NotPriced()
                : new PreWarmSearch(night, estimate, usual).best();
    }
}
