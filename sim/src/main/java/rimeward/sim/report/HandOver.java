package rimeward.sim.report;

import java.util.ArrayList;
import java.util.List;
import rimeward.core.guard.Holder;
import rimeward.sim.run.Trace;

/**
 * The warm duty passed from one machine to the other.
 *
 * @param epochS when, s since 1970 UTC
 */
record HandOver(long epochS, Holder from, Holder to) {

    static List<HandOver> in(Trace trace) {
        List<HandOver> found = new ArrayList<>();
        for (int row = 1; row < trace.rows(); row++) {
            Holder from = trace.holder(row - 1);
            Holder to = trace.holder(row);
            if (from != to && isMachine(from) && isMachine(to) && trace.isPowered(row) && trace.isPowered(row - 1)) {
                found.add(new HandOver(trace.epochS(row), from, to));
            }
        }
        return found;
    }

    private static boolean isMachine(Holder holder) {
        return holder == Holder.HEATER || holder == Holder.DRYER;
    }
}
