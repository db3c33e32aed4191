package rimeward.core.outlook;

import java.util.OptionalDouble;

/** What is expected outside at any time of the next day, before the sensor's word of now is counted. */
interface Base {
    Course.Basis basis();

    /** °C. */
    double airC(long epochS);

    /** Standard deviation of that, K. */
    double spreadK(long epochS);

    /** °C, where it says something of it. */
    OptionalDouble dewPointC(long epochS);

    /** The last time it speaks of, s since 1970 UTC. */
    long endsEpochS();
}
