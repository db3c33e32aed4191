package rimeward.sim.run;

import java.util.Optional;
import rimeward.core.reading.Tick;
import rimeward.port.Ticker;
import rimeward.sim.world.World;

/** Lets each tick through when its time has come for whoever watches, and none once they have seen enough. */
final class PacedTicker implements Ticker {
    private final Ticker ticker;
    private final World world;
    private final Pace pace;
    private boolean stopped;

    PacedTicker(Ticker ticker, World world, Pace pace) {
        this.ticker = ticker;
        this.world = world;
        this.pace = pace;
    }

    @Override
    public Optional<Tick> next() {
        Optional<Tick> tick = stopped ? Optional.empty() : ticker.next();
        stopped = stopped || !pace.reach(world.elapsedS());
        return stopped ? Optional.empty() : tick;
    }

    boolean isStopped() {
        return stopped;
    }
}
