package rimeward.core.guard;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import rimeward.site.Machine;
import rimeward.site.RelaySet;
import rimeward.site.Role;
import rimeward.site.Site;

/**
 * What the guard remembers from one tick to the next.
 *
 * @param closed its last word
 * @param clocks one for each machine
 * @param needed whether the warm duty was needed
 * @param hot whether the air was above the hot limit and has not yet cooled clear of it
 * @param dryerTooCold whether the dryer was locked out by cold and the air has not yet warmed clear of it
 * @param dryerRestLeftS how long the dryer still rests after running without drying, s
 * @param sinceAnyStartS since any machine started, s
 * @param blindPhaseS place in the blind duty cycle, s
 * @param standDowns machines that stand down for service
 */
public record GuardState(
        RelaySet closed,
        List<MachineClock> clocks,
        boolean needed,
        boolean hot,
        boolean dryerTooCold,
        double dryerRestLeftS,
        double sinceAnyStartS,
        double blindPhaseS,
        StandDowns standDowns) {

    /** With every machine in use. */
    public GuardState(
            RelaySet closed,
            List<MachineClock> clocks,
            boolean needed,
            boolean hot,
            boolean dryerTooCold,
            double dryerRestLeftS,
            double sinceAnyStartS,
            double blindPhaseS) {
        this(closed, clocks, needed, hot, dryerTooCold, dryerRestLeftS, sinceAnyStartS, blindPhaseS, StandDowns.NONE);
    }

    /** Before the first tick, with nothing known of the past: heat may start at once, all else rests first. */
    public static GuardState start(Site site) {
        List<MachineClock> clocks = new ArrayList<>();
        for (Machine machine : site.machines()) {
            clocks.add(machine.role() == Role.HEATER_STAGE ? MachineClock.RESTED : MachineClock.UNKNOWN);
        }
        return new GuardState(RelaySet.none(), List.copyOf(clocks), false, false, false, 0, MachineClock.ENOUGH_S, 0);
    }

    /** After a power cut every relay is open; the clocks count on, and who stood down still does. */
    public GuardState withAllOpen() {
        return new GuardState(
                RelaySet.none(),
                clocksAfter(RelaySet.none(), 0),
                needed,
                hot,
                dryerTooCold,
                dryerRestLeftS,
                sinceAnyStartS,
                blindPhaseS,
                standDowns);
    }

    /** The same with other machines standing down. */
    public GuardState with(StandDowns others) {
        return new GuardState(
                closed, clocks, needed, hot, dryerTooCold, dryerRestLeftS, sinceAnyStartS, blindPhaseS, others);
    }

    List<MachineClock> clocksAfter(RelaySet nowClosed, double dtS) {
        MachineClock[] next = new MachineClock[clocks.size()];
        for (int i = 0; i < next.length; i++) {
            next[i] = clocks.get(i).after(dtS, closed.has(i), nowClosed.has(i));
        }
        return Arrays.asList(next);
    }
}
