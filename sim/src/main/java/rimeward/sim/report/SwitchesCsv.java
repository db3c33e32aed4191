package rimeward.sim.report;

import java.time.Instant;
import rimeward.sim.run.Comparison;
import rimeward.sim.run.RunResult;
import rimeward.sim.run.SwitchEvent;

/** {@code switches.csv}: every change of a relay under every law, with its reason. */
public final class SwitchesCsv {
    private SwitchesCsv() {}

    public static String of(Comparison comparison) {
        StringBuilder out = new StringBuilder("timeUtc,law,machine,change,byGuard,reason\n");
        for (RunResult result : comparison.results()) {
            for (SwitchEvent event : result.switches()) {
                out.append(Instant.ofEpochSecond(event.epochS()))
                        .append(',')
                        .append(result.law().name())
                        .append(',')
                        .append(event.machineId())
                        .append(event.on() ? ",on," : ",off,")
                        .append(event.overruled() ? "1,\"" : "0,\"")
                        .append(event.sentence().replace("\"", "\"\""))
                        .append("\"\n");
            }
        }
        return out.toString();
    }
}
