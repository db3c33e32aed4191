package rimeward.record;

import java.util.List;
import rimeward.alert.AlertSlot;
import rimeward.core.Pulse;
import rimeward.core.guard.GuardState;
import rimeward.core.judgement.BenchHabit;
import rimeward.core.order.Standing;
import rimeward.core.reading.WallTime;
import rimeward.core.watch.Failures;

/**
 * What control must not forget when the service ends, however it ends: rest times, duties, the coldest outside of late, and what
 * has failed, how the benches differ, and what the grower has been told already. Not in it is what a new start sees afresh.
 *
 * @param boot names the machine's run since it was switched on; empty where nobody knows
 * @param wall time of day at the last tick, and whether it was trusted
 * @param pulse monotonic time of the last tick, which the next start counts on from
 * @param machines the machines' names, in the order of the guard's clocks
 * @param guard what the guard remembers
 * @param failures machines that were seen to fail
 * @param habits how the benches usually differ
 * @param law name of the law
 * @param lawMemory what the law remembers, one line in its own words
 * @param assumedOutsideC outside temperature to assume when none is seen, °C
 * @param lastOutageS how long the last power cut lasted, s; 0 before the first
 * @param alerts every slot of the alert board that is raised or about to change
 * @param standing what the grower ordered
 */
public record SavedState(
        String boot,
        WallTime wall,
        Pulse pulse,
        List<String> machines,
        GuardState guard,
        Failures failures,
        List<BenchHabit> habits,
        String law,
        String lawMemory,
        double assumedOutsideC,
        double lastOutageS,
        List<AlertSlot> alerts,
        Standing standing) {
    /** With nothing ordered. */
    public SavedState(
            String boot,
            WallTime wall,
            Pulse pulse,
            List<String> machines,
            GuardState guard,
            Failures failures,
            List<BenchHabit> habits,
            String law,
            String lawMemory,
            double assumedOutsideC,
            double lastOutageS,
            List<AlertSlot> alerts) {
        this(
                boot,
                wall,
                pulse,
                machines,
                guard,
                failures,
                habits,
                law,
                lawMemory,
                assumedOutsideC,
                lastOutageS,
                alerts,
                Standing.NONE);
    }

    public SavedState {
        machines = List.copyOf(machines);
        habits = List.copyOf(habits);
        alerts = List.copyOf(alerts);
    }

    /** One versioned text, with a checksum in its last line. */
    public String toText() {
        return StateText.write(this);
    }

    /**
     * Reads {@link #toText} back.
     *
     * @throws DamagedState if it is not whole, or of a version that this program does not know
     */
    public static SavedState parse(String text) {
        return StateText.read(text);
    }
}
