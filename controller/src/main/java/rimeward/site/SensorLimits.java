package rimeward.site;

/**
 * What a sound reading can be. The defaults are common practice for small digital sensors in a tunnel, no source.
 *
 * @param leastC coldest believable reading, °C
 * @param mostC warmest believable reading, °C
 * @param rateKPerMin fastest believable change, K/min
 * @param frozenAfterS unchanged to the last digit for this long, while the air moved, is not believed, s
 * @param maxAgeS older than this is not believed, s
 * @param disagreementK farther than this from the middle of the inside sensors is not believed, K
 */
public record SensorLimits(
        double leastC, double mostC, double rateKPerMin, double frozenAfterS, double maxAgeS, double disagreementK) {
    public SensorLimits {
        Check.within("leastC", leastC, -80, 0);
        Check.within("mostC", mostC, 30, 125);
        Check.within("rateKPerMin", rateKPerMin, 0.5, 60);
        Check.within("frozenAfterS", frozenAfterS, 300, 86_400);
        Check.within("maxAgeS", maxAgeS, 5, 3600);
        Check.within("disagreementK", disagreementK, 0.5, 20);
    }

    public static SensorLimits defaults() {
        return new SensorLimits(-40, 60, 5, 1800, 60, 5);
    }
}
