package rimeward.sim.run;

import rimeward.port.Relays;
import rimeward.site.RelaySet;
import rimeward.site.Site;

/** What relays do when the controller is gone: the site's stop state. Rivals are switched by hand or by plugs, which stay as they are. */
final class FailState {
    private final Relays relays;
    private final RelaySet fallen;
    private final boolean falls;
    private RelaySet closed = RelaySet.none();

    FailState(Site site, Relays relays, boolean falls) {
        this.relays = relays;
        this.falls = falls;
        fallen = site.stopState();
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
