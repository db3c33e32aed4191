package rimeward.sim.check;

/**
 * A property that did not hold in one run.
 *
 * @param property which
 * @param firstEpochS when first, s since 1970 UTC
 * @param lastedS how long altogether, s; for a property of moments (P4, P7, P8) a tick each
 * @param text what was found the first time, with its numbers; one sentence without a full stop
 */
public record Breach(Property property, long firstEpochS, long lastedS, String text) {}
