package rimeward.core.tunnel;

/**
 * What one night says of the heat loss, beside that of the tunnel as it was learned once.
 *
 * @param epochS when its dark hours began, s since 1970 UTC
 * @param logFactor natural logarithm of the factor by which the loss seemed larger; 0: as learned
 * @param standardError of that, as the night's own readings have it: wind and sky are not in it
 */
record LossNight(long epochS, double logFactor, double standardError) {}
