package rimeward.sim.run;

import java.time.ZoneOffset;
import java.util.List;

/**
 * What was replayed, for people.
 *
 * @param id file name without its ending: "cold-snap"
 * @param title a few words
 * @param description one or more sentences on what happens, and what to look for
 * @param weather where the weather comes from, in one line
 * @param startEpochS first second, since 1970 UTC
 * @param lengthS length, s
 * @param tickS control tick, s
 * @param seed names the luck of sensors, forecast and faults
 * @param offset the place's offset from UTC, fixed: evenings, tariffs and "02:14" in the scenario mean this clock
 * @param faults what goes wrong and when, in order of time
 */
public record ScenarioHeader(
        String id,
        String title,
        String description,
        String weather,
        long startEpochS,
        long lengthS,
        int tickS,
        long seed,
        ZoneOffset offset,
        List<FaultNote> faults) {
    public ScenarioHeader {
        faults = List.copyOf(faults);
    }

    /** The second after the last. */
    public long endEpochS() {
        return startEpochS + lengthS;
    }
}
