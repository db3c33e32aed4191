package rimeward.core.guard;

import rimeward.core.decision.Cause;
import rimeward.core.decision.Reason;
import rimeward.site.Machine;
import rimeward.site.RelaySet;
import rimeward.site.Role;
import rimeward.site.Site;

/** What the machines themselves ask: shortest runs and rests, and no more starts an hour than they bear. */
final class Comfort {
    private final Machine[] machines;

    Comfort(Site site) {
        machines = site.machines().toArray(new Machine[0]);
    }

    void apply(LastWord word, GuardState was, double dtS) {
        for (int i = 0; i < machines.length; i++) {
            Machine machine = machines[i];
            MachineClock clock = was.clocks().get(i);
            double sinceSwitchS = clock.sinceSwitchS() + dtS;
            double sinceStartS = clock.sinceStartS() + dtS;
            RelaySet self = RelaySet.of(1 << i);
            if (!was.closed().has(i)) {
                rest(word, self, machine, sinceSwitchS, sinceStartS);
            } else if (!word.has(i)) {
                keepRunning(word, self, machine, sinceSwitchS, sinceStartS);
            }
        }
    }

    /**
     * A heater stage also runs on until, after its rest, it could start again: so its starts an hour stay bounded, and it
     * is never off with no start in hand when the cold comes.
     */
    private static void keepRunning(
            LastWord word, RelaySet self, Machine machine, double sinceSwitchS, double sinceStartS) {
        if (sinceSwitchS < machine.minOnS()) {
            word.demand(self, new Reason(Cause.MIN_ON, sinceSwitchS, machine.minOnS()));
        } else if (machine.role() == Role.HEATER_STAGE && sinceStartS + machine.minRestS() < machine.startSpacingS()) {
            word.demand(self, new Reason(Cause.START_IN_HAND, sinceStartS, machine.startSpacingS()));
        }
    }

    /** A heater's rest is comfort, and the floor outranks it; a dryer's or fan's rest protects the machine. */
    private static void rest(LastWord word, RelaySet self, Machine machine, double sinceSwitchS, double sinceStartS) {
        Reason why;
        if (sinceSwitchS < machine.minRestS()) {
            why = new Reason(Cause.MIN_REST, sinceSwitchS, machine.minRestS());
        } else if (sinceStartS < machine.startSpacingS()) {
            why = new Reason(Cause.START_SPACING, sinceStartS, machine.startSpacingS());
        } else {
            return;
        }
        if (machine.role() == Role.HEATER_STAGE) {
            word.forbid(self, why);
        } else {
            word.lock(self, why);
        }
    }
}
