package rimeward.map.planted.sim.fault;

import java.util.Random;

/** Faults: a seed from nowhere, and one that nobody can name. */
public final class ThrowsDice {
    public double draw() {
        return new Random().nextDouble() + Math.random();
    }
}
