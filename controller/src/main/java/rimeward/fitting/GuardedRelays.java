package rimeward.fitting;

import rimeward.port.Relays;
import rimeward.site.RelaySet;
import rimeward.site.Site;

/**
 * Relays that end in their stop state whatever ends the program. From any thread: a Ctrl-C comes on another one, and after it nothing is
 * switched any more. Who opens goes before who closes, so that no moment carries more than either side of it.
 */
public final class GuardedRelays implements Relays, AutoCloseable {
    private final Relays relays;
    private final Runnable letGo;
    private RelaySet closed;
    private boolean ended;

    /**
     * @param relays now in their stop state
     * @param letGo puts them there again, and lets go of them
     */
    public GuardedRelays(Site site, Relays relays, Runnable letGo) {
        this.relays = relays;
        this.letGo = letGo;
        closed = site.stopState();
    }

    @Override
    public synchronized void close(RelaySet set) {
        if (!ended) {
            if (!closed.minus(set).isEmpty()) {
                relays.close(closed.and(set));
            }
            relays.close(set);
            closed = set;
        }
    }

    @Override
    public synchronized void close() {
        if (!ended) {
            ended = true;
            letGo.run();
        }
    }
}
