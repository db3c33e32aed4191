package rimeward.core.outlook;

/** From sunset to the sunrise after it; s since 1970 UTC. */
public record NightSpan(long sunsetEpochS, long sunriseEpochS) {
    private static final long EVENING_S = 7200;

    /** Two hours after sunset: from here the air cools steadily until sunrise (Snyder &amp; de Melo-Abreu, FAO 2005, ch. 5). */
    public long eveningEpochS() {
        return sunsetEpochS + EVENING_S;
    }
}
