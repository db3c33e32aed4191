package rimeward.page;

import rimeward.record.FrameRow;
import rimeward.site.RelaySet;
import rimeward.site.Site;

/** How often each machine was started in a day of the record, and how long its relay was closed. */
public final class MachineDay {
    private final int[] starts;
    private final double[] closedS;
    private final Intervals whiles = new Intervals(this::add);
    private RelaySet closed = RelaySet.none();
    private boolean begun;

    public MachineDay(Site site) {
        starts = new int[site.machines().size()];
        closedS = new double[starts.length];
    }

    /** Takes a kept frame; in the order they were taken. */
    public void add(FrameRow row) {
        whiles.add(row);
        RelaySet before = row.outageS() > 0 ? RelaySet.none() : closed;
        for (int i = 0; i < starts.length; i++) {
            starts[i] += begun && row.closed().has(i) && !before.has(i) ? 1 : 0;
        }
        begun = true;
        closed = row.closed();
    }

    private void add(FrameRow row, long fromMs, long toMs) {
        for (int i = 0; i < closedS.length; i++) {
            closedS[i] += row.closed().has(i) ? (toMs - fromMs) / 1000.0 : 0;
        }
    }

    int starts(int machine) {
        return starts[machine];
    }

    double hours(int machine) {
        return closedS[machine] / 3600;
    }
}
