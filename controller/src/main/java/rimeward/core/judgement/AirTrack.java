package rimeward.core.judgement;

/**
 * What the judge remembers of one temperature.
 *
 * @param known whether there has been a reading at all; until then the numbers mean nothing
 * @param lastC last reading in range, °C
 * @param smoothC the same, smoothed, °C
 * @param slopeKPerS how fast it changes, smoothed, K/s
 * @param heldForS how long it has stood unchanged to the last digit, s
 * @param othersAtHoldC what its neighbours read when it last changed, °C
 * @param doubtLeftS how long a jump still keeps it in doubt, s
 */
record AirTrack(
        boolean known,
        double lastC,
        double smoothC,
        double slopeKPerS,
        double heldForS,
        double othersAtHoldC,
        double doubtLeftS) {

    /** Time constant of smoothing and slope, s: long against noise, short against how fast a light tunnel cools. Own choice. */
    private static final double SMOOTH_S = 45;

    /** A jump keeps a reading in doubt this long, s. Own choice. */
    private static final double DOUBT_S = 600;

    /** Jumps are judged over at least this long, s, so that fast ticks do not make noise look like a jump. */
    private static final double JUMP_S = 30;

    static final AirTrack START = new AirTrack(false, 0, 0, 0, 0, 0, 0);

    /** After a reading in range. */
    AirTrack seen(double airC, double othersC, double rateKPerMin, double dtS) {
        if (!known) {
            return new AirTrack(true, airC, airC, 0, 0, othersC, 0);
        }
        boolean jumped = StrictMath.abs(airC - lastC) > rateKPerMin / 60 * StrictMath.max(dtS, JUMP_S);
        double doubtS = jumped ? DOUBT_S : StrictMath.max(0, doubtLeftS - dtS);
        double smooth = jumped ? airC : smoothC + (airC - smoothC) * dtS / (SMOOTH_S + dtS);
        boolean held = airC == lastC;
        return new AirTrack(
                true,
                airC,
                smooth,
                (airC - smooth) / SMOOTH_S,
                held ? heldForS + dtS : 0,
                held ? othersAtHoldC : othersC,
                doubtS);
    }
}
