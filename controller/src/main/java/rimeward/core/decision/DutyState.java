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
}
