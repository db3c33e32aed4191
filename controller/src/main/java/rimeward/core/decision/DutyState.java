package rimeward.core.decision;

/**
 * What {@link DutyLaw} remembers.
 *
 * @param dryerWarms whether the dryer was asked to warm
 * @param timerS place in the dryer's timed cycle while humidity is unknown, s
 * @param airing whether outside air was drier and warm enough
 */
record DutyState(WarmDuty warm, DryDuty dry, boolean dryerWarms, double timerS, boolean airing) implements LawState {
    static final DutyState START = new DutyState(WarmDuty.START, DryDuty.START, false, 0, false);

    /** One line for the saved state. */
    String toText() {
        return String.join(
                " ",
                "" + warm.sources(),
                "" + warm.wentUp(),
                "" + warm.sinceS(),
                "" + dry.known(),
                "" + dry.needed(),
                "" + dry.rhPercent(),
                "" + dry.benchSpreadK(),
                "" + dry.filmSpreadK(),
                "" + dryerWarms,
                "" + timerS,
                "" + airing);
    }

    /** Reads {@link #toText} back; whatever else it is handed, it begins anew. */
    static DutyState parse(String text) {
        String[] part = text.split(" ", -1);
        try {
            return part.length != 11
                    ? START
                    : new DutyState(warm(part), dry(part), on(part[8]), of(part[9]), on(part[10]));
        } catch (NumberFormatException e) {
            return START;
        }
    }

    private static WarmDuty warm(String[] part) {
        return new WarmDuty(Integer.parseInt(part[0]), on(part[1]), of(part[2]));
    }

    private static DryDuty dry(String[] part) {
        return new DryDuty(on(part[3]), on(part[4]), of(part[5]), of(part[6]), of(part[7]));
    }

    private static boolean on(String word) {
        return Boolean.parseBoolean(word);
    }

    private static double of(String word) {
        return Double.parseDouble(word);
    }
}
