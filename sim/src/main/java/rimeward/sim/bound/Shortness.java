package rimeward.sim.bound;

/** By how much a path is below what it had to keep. */
final class Shortness {
    private Shortness() {}

    /** At its worst, at a sixth, half and end of each quarter, K; 0 where it kept all. */
    static double ofK(Path path, Kept kept) {
        double worstK = 0;
        for (int k = 0; k < path.quarters().length; k++) {
            Quarter now = path.quarters()[k];
            worstK = Math.max(worstK, kept.needC(k) - Math.min(now.earlyC(), now.middleC()));
            worstK = Math.max(worstK, kept.needEndC(k) - now.endC());
        }
        return worstK;
    }
}
