package rimeward.adapter.forecast;

/** Lengths of time as people say them. */
final class Ages {
    private static final long MINUTE_S = 60;
    private static final long HOUR_S = 3600;

    private Ages() {}

    /** Minutes up to two hours, hours from there on, days beyond three. */
    static String inWords(long ageS) {
        long s = Math.max(0, ageS);
        if (s < 2 * HOUR_S) {
            return s / MINUTE_S == 1 ? "1 minute" : s / MINUTE_S + " minutes";
        }
        return s < 72 * HOUR_S ? s / HOUR_S + " hours" : s / (24 * HOUR_S) + " days";
    }
}
