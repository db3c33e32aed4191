package rimeward.core.judgement;

/**
 * What the judge remembers of one humidity.
 *
 * @param lastPercent last reading, %
 * @param heldForS how long it has stood unchanged to the last digit, s
 */
record RhTrack(double lastPercent, double heldForS) {
    static final RhTrack START = new RhTrack(-1, 0);

    RhTrack seen(double rhPercent, double dtS) {
        return new RhTrack(rhPercent, rhPercent == lastPercent ? heldForS + dtS : 0);
    }
}
