package rimeward.core.outlook;

import java.util.OptionalDouble;

/** What is expected outside at any time of the next day, before the sensor's word of now is counted. */
interface Base {
    Course.Basis basis();

    /** °C. */
    double airC(long epochS);

    /** Standard deviation of that, K. */
    double spreadK(long epochS);

    /** The same when it is known how far the air is off at another, earlier time. */
    double spreadK(long epochS, long seenEpochS);

    /** How much lower a night's lowest turns out than its hours say, K; negative where it does. */
    double lowestOffK();

    /** How much of what the air is off at that earlier time stays until then, 0 to 1. */
    double keep(long epochS, long seenEpochS);

    /** °C, where it says something of it. */
    OptionalDouble dewPointC(long epochS);

    /** The last time it speaks of, s since 1970 UTC. */
    long endsEpochS();
}
