package rimeward.strip;

/** A ringed point of a line, with a few words. */
public record Note(long epochS, double value, String text) {}
