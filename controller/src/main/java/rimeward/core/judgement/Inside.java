package rimeward.core.judgement;

import java.util.List;

/** The air inside, as far as it is known. */
public sealed interface Inside {
    /**
     * At least one inside temperature is believed.
     *
     * @param coldestC lowest believed reading less its sensor's uncertainty, °C
     * @param middleC mean of the believed readings, °C
     * @param hottestC highest believed reading, °C
     * @param coldestSensor which of the site's sensors reads coldest
     * @param benches each believed one, because the coldest now need not be the coldest soon
     */
    record Seen(double coldestC, double middleC, double hottestC, int coldestSensor, List<Bench> benches)
            implements Inside {
        /** With no bench of interest but the coldest. */
        public Seen(double coldestC, double middleC, double hottestC, double slopeKPerS, int coldestSensor) {
            this(coldestC, middleC, hottestC, coldestSensor, List.of(new Bench(coldestC, slopeKPerS)));
        }
    }

    /**
     * One bench: its own temperature with its own slope.
     *
     * @param lowestC its reading less its sensor's uncertainty, °C
     * @param slopeKPerS how fast that changes, smoothed, K/s
     */
    record Bench(double lowestC, double slopeKPerS) {
        /** Smoothed, a slope tells how the air changed this long ago, s. */
        public static final double SLOPE_AGE_S = AirTrack.SMOOTH_S;
    }

    /**
     * Blind.
     *
     * @param forS how long already, s
     * @param tooHot whether something that still answers, though not believed, is above the hot limit
     */
    record Unseen(double forS, boolean tooHot) implements Inside {}
}
