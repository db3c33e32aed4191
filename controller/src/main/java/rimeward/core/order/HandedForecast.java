package rimeward.core.order;

import rimeward.core.outlook.Outlook;

/** A forecast that the grower handed over, or that none was. */
public sealed interface HandedForecast {
    /** None, or it was taken back. */
    record None() implements HandedForecast {}

    /**
     * One that goes before the forecast source's while it is fresh.
     *
     * @param night as of then
     * @param takenMs monotonic time at which it was taken, ms
     */
    record Night(Outlook.Night night, long takenMs) implements HandedForecast {
        /** One that was made a day ago says little, s. Own choice. */
        public static final double STALE_S = 86_400;

        /** How long it is used from when it was taken, s: until its night is over or it is stale. */
        public double lastsS() {
            return StrictMath.min(STALE_S, night.endsInS());
        }

        private double ageS(long nowMs) {
            return StrictMath.max(0, nowMs - takenMs) / 1000.0;
        }
    }

    HandedForecast NONE = new None();

    /** What to go by now: what was handed over while it is fresh, else what the source says. */
    static Outlook used(HandedForecast forecast, Outlook source, long nowMs) {
        if (!(forecast instanceof Night handed) || handed.ageS(nowMs) >= handed.lastsS()) {
            return source;
        }
        Outlook.Night then = handed.night();
        return new Outlook.Night(
                then.night(), then.lowestOutsideC(), then.spreadK(), then.endsInS() - handed.ageS(nowMs));
    }
}
