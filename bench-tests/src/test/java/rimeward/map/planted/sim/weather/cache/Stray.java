package rimeward.map.planted.sim.weather.cache;

/** Fault: a package that is not on the map, though its parent is. */
public final class Stray {}
