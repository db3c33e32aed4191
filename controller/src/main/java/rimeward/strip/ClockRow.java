package rimeward.strip;

/** Times of day and dates along the strip, by the place's clock. */
public record ClockRow() implements Row {
    private static final long DAY_S = 86_400;
    /** As many dates as stand side by side on a narrow screen. */
    private static final int NARROW_DATES = 4;

    private static final int LINE_PX = 16;
    private static final int BASELINE_PX = 12;
    private static final int EDGE_COLUMNS = Span.COLUMNS / 40;
    private static final int DAY_COLUMNS = Span.COLUMNS / 9;

    @Override
    public int heightPx() {
        return 2 * LINE_PX;
    }

    @Override
    public String says() {
        return "";
    }

    @Override
    public boolean isRuled() {
        return false;
    }

    @Override
    public void paper(Span span, Markup to) {
        TimeRules rules = TimeRules.of(span);
        if (rules.isByDay()) {
            days(span, rules, to);
        } else {
            times(span, rules, to);
            midnights(span, to);
        }
    }

    private static void times(Span span, TimeRules rules, Markup to) {
        for (long at = span.firstRuleS(rules.labelS()); at <= span.endS(); at += rules.labelS()) {
            String text = Stamp.clock(at, span.offset());
            label(span, at, BASELINE_PX, "clock" + sparse(span, at, rules), anchor(span, at), text, to);
        }
    }

    /** Dates at the start of each day, and of the strip where the first day is long enough to hold one. */
    private static void midnights(Span span, Markup to) {
        long firstS = span.firstRuleS(DAY_S);
        long everyDays = 1 + span.lengthS() / (NARROW_DATES * DAY_S + 1);
        if (span.column(firstS) > DAY_COLUMNS) {
            label(
                    span,
                    span.startS(),
                    LINE_PX + BASELINE_PX,
                    "date",
                    "start",
                    Stamp.day(span.startS(), span.offset()),
                    to);
        }
        for (long at = firstS; at < span.endS(); at += DAY_S) {
            int rest = Span.COLUMNS - span.column(at);
            boolean narrowToo = rest >= DAY_COLUMNS && (at - firstS) / DAY_S % everyDays == 0;
            String kind = narrowToo ? "date" : "date wide";
            if (rest > DAY_COLUMNS / 2) {
                label(span, at, LINE_PX + BASELINE_PX, kind, "start", Stamp.day(at, span.offset()), to);
            }
        }
    }

    private static void days(Span span, TimeRules rules, Markup to) {
        for (long at = span.firstRuleS(rules.labelS()); at < span.endS(); at += rules.labelS()) {
            label(
                    span,
                    at,
                    BASELINE_PX,
                    "date" + sparse(span, at, rules),
                    anchor(span, at),
                    Stamp.day(at, span.offset()),
                    to);
        }
    }

    private static String sparse(Span span, long at, TimeRules rules) {
        return (at - span.firstRuleS(rules.sparseLabelS())) % rules.sparseLabelS() == 0 ? "" : " wide";
    }

    /** Labels stand in the middle of their rule, and inside the strip at its ends. */
    private static String anchor(Span span, long at) {
        int column = span.column(at);
        return column < EDGE_COLUMNS ? "start" : column > Span.COLUMNS - EDGE_COLUMNS ? "end" : "middle";
    }

    private static void label(Span span, long at, int yPx, String kind, String anchor, String text, Markup to) {
        to.put("text", text, "class", kind, "x", span.percent(at), "y", Integer.toString(yPx), "text-anchor", anchor);
    }

    @Override
    public void gutter(Span span, Markup to) {}
}
