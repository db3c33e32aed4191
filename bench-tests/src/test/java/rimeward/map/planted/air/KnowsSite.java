package rimeward.map.planted.air;

import java.util.List;
import rimeward.map.planted.site.Floor;

/** Fault: {@code air} may import nothing of ours, not even in a type argument. */
public record KnowsSite(List<Floor> floors) {}
