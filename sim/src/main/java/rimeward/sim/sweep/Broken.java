package rimeward.sim.sweep;

/**
 * A property that did not hold in a winter under our law.
 *
 * @param code of the property, such as P2; P9 where a second run differed; "ledger" where heat or water does not add up; "crash"
 * @param firstEpochS when first, s since 1970 UTC; the winter's start where that is not known
 * @param lastedS how long altogether, s
 * @param text what was found, in a sentence without a full stop
 */
public record Broken(String code, long firstEpochS, long lastedS, String text) {}
