package rimeward.homie;

import rimeward.core.Outcome;
import rimeward.core.decision.Reason;
import rimeward.core.guard.Holder;
import rimeward.site.RelaySet;
import rimeward.site.Site;

/** Why the floor is kept by whom it is, in a sentence. */
final class DutyWhy {
    private DutyWhy() {}

    static Shown of(Site site, Outcome outcome) {
        Holder holder = outcome.guarded().holder();
        RelaySet holds = holder == Holder.DRYER ? site.dryerRelay() : site.heaterStages();
        int at = first(outcome, holds);
        Reason reason = outcome.guarded().reasons().get(at);
        String machine = site.machines().get(at).id();
        String says = outcome.guarded().closed().has(at) ? " is on: " : " is off: ";
        return new Shown.Text(Words.of(holder) + at + reason.cause(), machine + says + reason.sentence(site.degrees()));
    }

    /** The first of them that runs; where none does, the first. */
    private static int first(Outcome outcome, RelaySet of) {
        RelaySet running = outcome.guarded().closed().and(of);
        return Integer.numberOfTrailingZeros((running.isEmpty() ? of : running).bits());
    }
}
