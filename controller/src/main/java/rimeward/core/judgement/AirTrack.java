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
 * @param usualK how much warmer its bench usually is than all of them together, K; outlives the reading
 */
record AirTrack(
        boolean known,
        double lastC,
        double smoothC,
        double slopeKPerS,
        double heldForS,
        double othersAtHoldC,
        double doubtLeftS,
        double usualK) {

    /** Time constant of smoothing and slope, s: long against noise, short against how fast a light tunnel cools. Own choice. */
    static final double SMOOTH_S = 45;

    private static final double PER_SMOOTH_S = 1 / SMOOTH_S;

    /** A jump keeps a reading in doubt this long, s. Own choice. */
    private static final double DOUBT_S = 600;

    /** Jumps are judged over at least this long, s, so that fast ticks do not make noise look like a jump. */
    private static final double JUMP_S = 30;

    static final AirTrack START = new AirTrack(false, 0, 0, 0, 0, 0, 0, 0);

    /**
     * What every reading of one tick shares.
     *
     * @param dtS since the last tick, s
     * @param share of the way that a smoothed value moves
     * @param jumpMin time over which a jump is judged, min
     */
    record Beat(double dtS, double share, double jumpMin) {
        static Beat of(double dtS) {
            return new Beat(dtS, dtS / (SMOOTH_S + dtS), StrictMath.max(dtS, JUMP_S) / 60);
        }
    }

    /** After a reading in range. */
    AirTrack seen(double airC, double othersC, double rateKPerMin, Beat beat) {
        if (!known) {
            return new AirTrack(true, airC, airC, 0, 0, othersC, 0, usualK);
        }
        boolean jumped = StrictMath.abs(airC - lastC) > rateKPerMin * beat.jumpMin();
        double doubtS = jumped ? DOUBT_S : StrictMath.max(0, doubtLeftS - beat.dtS());
        double smooth = jumped ? airC : smoothC + (airC - smoothC) * beat.share();
        boolean held = airC == lastC;
        return new AirTrack(
                true,
                airC,
                smooth,
                (airC - smooth) * PER_SMOOTH_S,
                held ? heldForS + beat.dtS() : 0,
                held ? othersAtHoldC : othersC,
                doubtS,
                usualK);
    }

    /** Without a reading that can be compared with the next: only the bench's habit is kept. */
    AirTrack forgotten() {
        return known ? START.usually(usualK) : this;
    }

    AirTrack usually(double nowUsualK) {
        return new AirTrack(known, lastC, smoothC, slopeKPerS, heldForS, othersAtHoldC, doubtLeftS, nowUsualK);
    }
}
