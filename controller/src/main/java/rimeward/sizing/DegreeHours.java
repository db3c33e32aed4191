package rimeward.sizing;

/** How cold for how long: the area between a temperature and the air below it, K·h. */
final class DegreeHours {
    private DegreeHours() {}

    /** Below {@code baseC}, while the air goes in a straight line from one temperature to another within so many hours. */
    static double belowKh(double fromC, double toC, double baseC, double hours) {
        double fromK = baseC - fromC;
        double toK = baseC - toC;
        if (fromK <= 0 && toK <= 0) {
            return 0;
        }
        if (fromK >= 0 && toK >= 0) {
            return hours * (fromK + toK) / 2;
        }
        double deepestK = Math.max(fromK, toK);
        return hours * deepestK * deepestK / (2 * Math.abs(fromK - toK)); // the triangle below the base
    }
}
