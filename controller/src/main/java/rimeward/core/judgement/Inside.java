package rimeward.core.judgement;

/** The air inside, as far as it is known. */
public sealed interface Inside {
    /**
     * At least one inside temperature is believed.
     *
     * @param coldestC lowest believed reading less its sensor's uncertainty, °C
     * @param middleC mean of the believed readings, °C
     * @param hottestC highest believed reading, °C
     * @param slopeKPerS fastest believed change downward (negative) or slowest upward, smoothed, K/s
     * @param coldestSensor which of the site's sensors reads coldest
     */
    record Seen(double coldestC, double middleC, double hottestC, double slopeKPerS, int coldestSensor)
            implements Inside {}

    /**
     * Blind.
     *
     * @param forS how long already, s
     * @param tooHot whether something that still answers, though not believed, is above the hot limit
     */
    record Unseen(double forS, boolean tooHot) implements Inside {}
}
