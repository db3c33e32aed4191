package rimeward.core.guard;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import rimeward.core.decision.Decision;
import rimeward.core.decision.Reason;
import rimeward.site.RelaySet;

/**
 * The wish on its way to becoming the command. Rules forbid, demand and lock, and each leaves its reason where it changed
 * something; what is locked no later rule can demand. Lives for one tick.
 */
final class LastWord {
    private final Decision decision;
    private final int machines;
    private Reason @Nullable [] reasons; // the law's own until a rule has something to say
    private int closed;
    private int locked;

    LastWord(Decision decision, int machines) {
        this.decision = decision;
        this.machines = machines;
        closed = decision.wish().bits();
    }

    boolean has(int machine) {
        return ((closed >> machine) & 1) != 0;
    }

    RelaySet closed() {
        return RelaySet.of(closed);
    }

    void demand(RelaySet set, Reason why) {
        change(set.bits() & ~closed & ~locked, why);
    }

    void forbid(RelaySet set, Reason why) {
        change(set.bits() & closed, why);
    }

    void lock(RelaySet set, Reason why) {
        forbid(set, why);
        locked |= set.bits();
    }

    private void change(int bits, Reason why) {
        if (bits == 0) {
            return;
        }
        if (reasons == null) {
            reasons = decision.reasons().toArray(new Reason[0]);
        }
        for (int i = 0; i < machines; i++) {
            if (((bits >> i) & 1) != 0) {
                reasons[i] = why;
            }
        }
        closed ^= bits;
    }

    RelaySet overruled() {
        return RelaySet.of(closed ^ decision.wish().bits());
    }

    List<Reason> reasons() {
        return reasons == null ? decision.reasons() : Arrays.asList(reasons);
    }
}
