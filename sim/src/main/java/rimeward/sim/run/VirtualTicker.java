package rimeward.sim.run;

import java.util.Optional;
import rimeward.core.reading.Tick;
import rimeward.core.reading.WallTime;
import rimeward.port.Ticker;
import rimeward.sim.fault.Fault;
import rimeward.sim.fault.FaultKind;
import rimeward.sim.world.World;

/**
 * Time as a simulated controller meets it: each wait for a tick moves the world by one. Without mains there are no ticks, and the world
 * goes on alone; when they return the controller has to start first, which takes a while too. For one thread.
 */
final class VirtualTicker implements Ticker {
    /** From mains to the first tick of a small computer, s. Common practice, no source. */
    private static final long START_UP_S = 30;

    /** Who is told of time. */
    interface Passing {
        /** The controller is gone: its outputs fall to what the wiring makes of that. */
        void controllerGone();

        /** A stretch without a controller begins. */
        void beginDark();

        /** A tick, or a stretch without a controller, is over. */
        void end(long lastsS);
    }

    private final World world;
    private final Passing passing;
    private final long startEpochS;
    private final long lengthS;
    private final int tickS;
    private long nowS;
    private long number;
    private boolean inTick;
    private boolean restarts;
    private long clockErrorMs;
    private long processStartS;

    VirtualTicker(World world, Passing passing, long startEpochS, long lengthS, int tickS) {
        this.world = world;
        this.passing = passing;
        this.startEpochS = startEpochS;
        this.lengthS = lengthS;
        this.tickS = tickS;
    }

    /** No tick, and {@link #isOver} still false: the controller has restarted and wants a new loop. */
    @Override
    public Optional<Tick> next() {
        if (inTick) {
            step();
            passing.end(tickS);
            inTick = false;
        }
        if (!world.isControllerPowered()) {
            darkUntilMainsReturn();
        }
        if (restarts) {
            restarts = false;
            dark(START_UP_S);
            number = 0;
            processStartS = nowS;
            return Optional.empty();
        }
        if (isOver()) {
            return Optional.empty();
        }
        inTick = true;
        return Optional.of(new Tick(number++, (nowS - processStartS) * 1000, wall()));
    }

    /** The controller's clock. */
    WallTime wall() {
        return new WallTime((startEpochS + nowS) * 1000 + clockErrorMs, true);
    }

    boolean isOver() {
        return nowS >= lengthS;
    }

    private void darkUntilMainsReturn() {
        passing.controllerGone();
        while (!isOver() && !world.isControllerPowered()) {
            darkStep();
        }
        dark(START_UP_S);
        restarts = false; // it has just started anyway
    }

    private void dark(long forS) {
        passing.controllerGone();
        for (long leftS = forS; leftS > 0 && !isOver(); leftS -= tickS) {
            darkStep();
        }
    }

    private void darkStep() {
        passing.beginDark();
        step();
        passing.end(tickS);
    }

    private void step() {
        nowS += tickS;
        for (double changeS = world.faults().nextChangeS();
                changeS <= nowS;
                changeS = world.faults().nextChangeS()) {
            world.advanceTo(changeS);
            world.faults().begun().forEach(this::begun);
        }
        world.advanceTo((double) nowS);
    }

    private void begun(Fault fault) {
        if (fault.kind() == FaultKind.CLOCK_JUMP) {
            clockErrorMs += (long) (fault.magnitude() * 1000);
        } else if (fault.kind() == FaultKind.CONTROLLER_RESTART) {
            restarts = true;
        }
    }
}
