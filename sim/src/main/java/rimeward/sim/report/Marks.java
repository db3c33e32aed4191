package rimeward.sim.report;

import java.util.ArrayList;
import java.util.List;
import rimeward.sim.run.AlertEvent;
import rimeward.sim.run.FaultNote;
import rimeward.sim.run.RunResult;
import rimeward.sim.run.ScenarioHeader;
import rimeward.strip.Mark;

/** Faults (F1, F2 …) and alerts (A1, A2 …) as they are numbered on the strip, below it and in the log. */
record Marks(List<Mark> faults, List<Mark> alerts) {

    static Marks of(ScenarioHeader header, RunResult result) {
        List<Mark> faults = new ArrayList<>();
        for (FaultNote fault : header.faults()) {
            faults.add(new Mark(fault.fromEpochS(), "F" + (faults.size() + 1), "fault", fault.text()));
        }
        List<Mark> alerts = new ArrayList<>();
        for (AlertEvent alert : result.alerts()) {
            if (alert.raised()) {
                alerts.add(new Mark(
                        alert.epochS(),
                        "A" + (alerts.size() + 1),
                        "alert",
                        alert.kind().title()));
            }
        }
        return new Marks(List.copyOf(faults), List.copyOf(alerts));
    }

    List<Mark> all() {
        List<Mark> all = new ArrayList<>(faults);
        all.addAll(alerts);
        return all;
    }
}
