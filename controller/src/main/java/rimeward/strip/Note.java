package rimeward.strip;

/** A ringed point of a line, with a few words; without its ring at the edge of the panel where the point lies beyond. */
public record Note(long epochS, double value, String text) {}
