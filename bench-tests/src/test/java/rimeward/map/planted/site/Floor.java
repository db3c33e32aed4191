package rimeward.map.planted.site;

/** On the map, and no fault. */
public record Floor(double floorC) {}
