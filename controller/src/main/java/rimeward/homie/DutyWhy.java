package rimeward.homie;

import rimeward.core.Outcome;
import rimeward.core.guard.DutyWords;
import rimeward.core.guard.Guarded;
import rimeward.site.Site;

/** Why the floor is kept by whom it is, told again at another holder, machine or cause. */
final class DutyWhy {
    private DutyWhy() {}

    static Shown of(Site site, Outcome outcome) {
        Guarded guarded = outcome.guarded();
        int at = DutyWords.machine(site, guarded);
        String mark =
                Words.of(guarded.holder()) + at + guarded.reasons().get(at).cause();
        return new Shown.Text(mark, DutyWords.of(site, guarded));
    }
}
