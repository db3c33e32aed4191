package rimeward.map.planted.core.reading;

import java.util.Random;
import rimeward.map.planted.site.Floor;

/** On the map, and no fault: an allowed import, exact arithmetic, a seeded stream. */
public final class Honest {
    public double highC(Floor floor, long seed) {
        return StrictMath.exp(Math.sqrt(Math.max(floor.floorC(), new Random(seed).nextGaussian())));
    }
}
