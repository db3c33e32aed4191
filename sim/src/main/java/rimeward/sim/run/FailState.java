package rimeward.sim.run;

import rimeward.port.Relays;
import rimeward.site.Machine;
import rimeward.site.RelaySet;
import rimeward.site.Role;
import rimeward.site.Site;
import rimeward.site.Wiring;

/**
 * What relays do when the controller is gone. A relay on a line does what its settings say; where nothing is wired yet, the first
 * heater stage falls closed and leaves the heater to its own thermostat, and all else falls open. Rivals are switched by hand or by plugs,
 * which stay as they are.
 */
final class FailState {
    private final Relays relays;
    private final RelaySet fallen;
    private final boolean falls;
    private RelaySet closed = RelaySet.none();

    FailState(Site site, Relays relays, boolean falls) {
        this.relays = relays;
        this.falls = falls;
        RelaySet set = RelaySet.none();
        for (int i = 0; i < site.machines().size(); i++) {
            set = fallsClosed(site.machines().get(i), i) ? set.with(i) : set;
        }
        fallen = set;
    }

    private static boolean fallsClosed(Machine machine, int place) {
        if (machine.wiring() instanceof Wiring.GpioLine line) {
            return line.closedAtStop();
        }
        return machine.role() == Role.HEATER_STAGE && place == 0;
    }

    /** The controller's last command. */
    void commanded(RelaySet set) {
        closed = set;
    }

    void fall() {
        if (falls) {
            closed = fallen;
            relays.close(fallen);
        }
    }

    /** Relays as they are without a controller. */
    RelaySet closed() {
        return closed;
    }
}
