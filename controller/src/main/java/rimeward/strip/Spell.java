package rimeward.strip;

/** A time during which something lasted. */
public record Spell(long fromS, long toS) {}
