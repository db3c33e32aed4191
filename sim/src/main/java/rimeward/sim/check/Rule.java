package rimeward.sim.check;

import java.util.Optional;

/** Watches one property; for one thread. */
interface Rule {
    void look(Facts now);

    Optional<Breach> breach();
}
