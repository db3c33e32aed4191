package rimeward.sim.run;

import java.util.List;

/**
 * One scenario under one law.
 *
 * @param law which
 * @param summary the numbers of the table
 * @param trace how everything went, by the minute
 * @param switches every change of a relay, in order of time
 * @param alerts what the grower was told, in order of time
 */
public record RunResult(
        LawLabel law, Summary summary, Trace trace, List<SwitchEvent> switches, List<AlertEvent> alerts) {
    public RunResult {
        switches = List.copyOf(switches);
        alerts = List.copyOf(alerts);
    }
}
