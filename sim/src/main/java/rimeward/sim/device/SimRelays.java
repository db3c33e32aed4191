package rimeward.sim.device;

import rimeward.port.Relays;
import rimeward.sim.fault.SeededStream;
import rimeward.sim.world.World;
import rimeward.site.RelaySet;

/**
 * Relays that move a little late. That they may weld or stick is the world's affair; bouncing is over in milliseconds, which
 * no tick and no machine sees, so it is not played. For the world's thread.
 */
public final class SimRelays implements Relays {
    /** From command to contact at most, s. Common practice, no source. */
    private static final double LATEST_S = 0.05;

    private final World world;
    private final SeededStream luck;
    private RelaySet commanded = RelaySet.none();

    public SimRelays(World world, long seed) {
        this.world = world;
        luck = SeededStream.named(seed, "relays");
    }

    @Override
    public void close(RelaySet set) {
        int changed = set.bits() ^ commanded.bits();
        for (int machine = 0; changed != 0; machine++, changed >>= 1) {
            if ((changed & 1) != 0) {
                world.contact(machine, set.has(machine), luck.between(0.005, LATEST_S));
            }
        }
        commanded = set;
    }
}
