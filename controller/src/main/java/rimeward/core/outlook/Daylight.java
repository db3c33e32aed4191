package rimeward.core.outlook;

/** What the sun does on one day at a place; times in s since 1970 UTC. */
public sealed interface Daylight {
    /** When the sun stands highest. */
    long noonEpochS();

    /** It rises and sets, as nearly everywhere. */
    record RisesAndSets(long sunriseEpochS, long noonEpochS, long sunsetEpochS) implements Daylight {}

    /** Polar day: it does not set. */
    record NeverSets(long noonEpochS) implements Daylight {}

    /** Polar night: it does not rise. */
    record NeverRises(long noonEpochS) implements Daylight {}
}
