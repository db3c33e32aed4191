package rimeward.core.guard;

import rimeward.core.decision.Cause;
import rimeward.core.decision.Reason;
import rimeward.site.RelaySet;
import rimeward.site.Site;

/** Why the floor is kept by whom it is, in a sentence. */
public final class DutyWords {
    private DutyWords() {}

    /** As {@code heater-1 is on: the coldest bench, 4.3 °C, is at or below 4.5 °C}. */
    public static String of(Site site, Guarded guarded) {
        int at = machine(site, guarded);
        String says = guarded.closed().has(at) ? " is on: " : " is off: ";
        return site.machineIds().get(at) + says + guarded.reasons().get(at).sentence(site.degrees());
    }

    /** The machine whose reason it is: of those that hold the floor the first that runs; where none does, the first. */
    public static int machine(Site site, Guarded guarded) {
        RelaySet holds = guarded.holder() == Holder.DRYER ? site.dryerRelay() : site.heaterStages();
        RelaySet running = guarded.closed().and(holds);
        return Integer.numberOfTrailingZeros((running.isEmpty() ? holds : running).bits());
    }

    /** Whether the dryer runs for its heat while the heater holds the floor. */
    public static boolean helpsToo(Site site, Guarded guarded) {
        RelaySet dryer = guarded.closed().and(site.dryerRelay());
        if (dryer.isEmpty()) {
            return false;
        }
        Reason why = guarded.reasons().get(Integer.numberOfTrailingZeros(dryer.bits()));
        return why.cause().compareTo(Cause.DAMP) < 0 // those of the floor come first
                || why.cause() == Cause.WARM_BY_DRYER
                || why.cause() == Cause.FLOOR_NEAR
                || why.cause() == Cause.HEAT_LOST
                || why.cause() == Cause.NO_GAP
                || why.cause() == Cause.NO_GAP_SOON;
    }
}
