package rimeward.map.planted.sim.physics;

import rimeward.map.planted.core.reading.Honest;

/** Fault: the physics may import {@code air} and nothing else, not even in an array. */
public final class KnowsReading {
    public int count(Honest[] all) {
        return all.length;
    }
}
