package rimeward.core.outlook;

import java.util.Optional;
import rimeward.core.outlook.OutsideAir.Seen;

/**
 * The night that is going on, from noon, as far as it was seen.
 *
 * @param noonEpochS when it began, s since 1970 UTC
 * @param evening the air two hours after sunset, once that has been
 * @param lastEpochS when the outside was last seen
 * @param longestGapS for how long it was not, at most, s
 */
record OpenNight(
        long noonEpochS, OutsideAir evening, double lowestC, double highestC, long lastEpochS, long longestGapS) {
    /** A night with a longer gap may have been colder than was seen, s. Own choice. */
    private static final long MOST_GAP_S = 7200;

    /** The evening's air may be looked at so late, s. Own choice. */
    private static final long EVENING_LASTS_S = 1800;

    static OpenNight begunWith(Seen air, long noonEpochS) {
        return new OpenNight(
                noonEpochS, OutsideAir.UNSEEN, air.airC(), air.airC(), air.epochS(), air.epochS() - noonEpochS);
    }

    OpenNight with(Seen air, Optional<NightSpan> night) {
        boolean isEvening = evening instanceof OutsideAir.Unseen
                && night.isPresent()
                && air.epochS() >= night.get().eveningEpochS()
                && air.epochS() < night.get().eveningEpochS() + EVENING_LASTS_S;
        return new OpenNight(
                noonEpochS,
                isEvening ? air : evening,
                StrictMath.min(lowestC, air.airC()),
                StrictMath.max(highestC, air.airC()),
                air.epochS(),
                gapS(air.epochS()));
    }

    /** Empty where too much of it was not seen. */
    Optional<KnownNight> closed(long noonAfterEpochS) {
        return gapS(noonAfterEpochS) > MOST_GAP_S
                ? Optional.empty()
                : Optional.of(new KnownNight(evening, lowestC, highestC));
    }

    private long gapS(long untilEpochS) {
        return StrictMath.max(longestGapS, untilEpochS - lastEpochS);
    }
}
