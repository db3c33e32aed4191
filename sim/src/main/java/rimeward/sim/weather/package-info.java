/**
 * Weather as the simulator sees it: recorded, expanded from daily records, or made; with the sun and the sky.
 *
 * <p>A {@link rimeward.sim.weather.WeatherSeries} is the only thing the tunnel ever meets; everything else here makes one.
 *
 * <p>May import {@code rimeward.air} and nothing else of ours.
 */
package rimeward.sim.weather;
