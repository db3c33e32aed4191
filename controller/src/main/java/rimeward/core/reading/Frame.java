package rimeward.core.reading;

/** All that one tick knows of the world: latched once, then only read. */
public record Frame(Tick tick, Senses senses) {}
