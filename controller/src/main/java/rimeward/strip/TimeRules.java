package rimeward.strip;

/**
 * Where the time axis is ruled.
 *
 * @param fineS distance of fine rules, s
 * @param labelS distance of bold rules with a time, s
 * @param sparseLabelS distance of the times that stay on a narrow screen, s; a multiple of {@code labelS}
 */
public record TimeRules(long fineS, long labelS, long sparseLabelS) {
    private static final long HOUR_S = 3600;
    private static final long DAY_S = 24 * HOUR_S;

    public static TimeRules of(Span span) {
        long lengthS = span.lengthS();
        if (lengthS <= 6 * HOUR_S) {
            return new TimeRules(HOUR_S / 6, HOUR_S / 2, HOUR_S);
        }
        if (lengthS <= 18 * HOUR_S) {
            return new TimeRules(HOUR_S / 2, HOUR_S, 3 * HOUR_S);
        }
        if (lengthS <= 36 * HOUR_S) {
            return new TimeRules(HOUR_S, 2 * HOUR_S, 6 * HOUR_S);
        }
        if (lengthS <= 4 * DAY_S) {
            return new TimeRules(HOUR_S, 6 * HOUR_S, 12 * HOUR_S);
        }
        if (lengthS <= 10 * DAY_S) {
            return new TimeRules(6 * HOUR_S, 12 * HOUR_S, DAY_S);
        }
        long days = Math.floorDiv(lengthS, 12 * DAY_S) + 1;
        return new TimeRules(days * DAY_S / 2, days * DAY_S, 3 * days * DAY_S);
    }

    /** Whether labels are dates rather than times of day. */
    public boolean isByDay() {
        return labelS >= DAY_S;
    }
}
