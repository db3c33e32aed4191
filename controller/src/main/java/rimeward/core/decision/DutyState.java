package rimeward.core.decision;

/**
 * What {@link DutyLaw} remembers.
 *
 * @param dry whether the dry duty was needed
 * @param dryerWarms whether the dryer was asked to warm
 * @param timerS place in the dryer's timed cycle while humidity is unknown, s
 * @param airing whether outside air was drier and warm enough
 */
record DutyState(WarmDuty warm, boolean dry, boolean dryerWarms, double timerS, boolean airing) implements LawState {
    static final DutyState START = new DutyState(WarmDuty.START, false, false, 0, false);
}
