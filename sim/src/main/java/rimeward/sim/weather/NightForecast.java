package rimeward.sim.weather;

/**
 * What someone is told in the evening about the coming night.
 *
 * @param issuedAtEpochS when it was said
 * @param untilEpochS the end of the time it speaks of, which begins when it is issued
 * @param lowestC lowest outside temperature expected in that time
 */
public record NightForecast(long issuedAtEpochS, long untilEpochS, double lowestC) {}
