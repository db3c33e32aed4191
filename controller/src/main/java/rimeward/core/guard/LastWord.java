package rimeward.core.guard;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import rimeward.core.decision.Decision;
import rimeward.core.decision.Reason;
import rimeward.site.RelaySet;

/**
 * The wish on its way to becoming the command. Rules forbid, demand and lock, and each leaves its reason where it changed
 * something; what is locked no later rule can demand. Lives for one tick.
 */
final class LastWord {
    private record Lock(RelaySet set, Reason why) {}

    private final RelaySet wish;
    private final Reason[] reasons;
    private int closed;
    private int locked;
    private List<Lock> locks = List.of();

    LastWord(Decision decision) {
        wish = decision.wish();
        reasons = decision.reasons().toArray(new Reason[0]);
        closed = wish.bits();
    }

    boolean has(int machine) {
        return ((closed >> machine) & 1) != 0;
    }

    RelaySet closed() {
        return RelaySet.of(closed);
    }

    void demand(RelaySet set, Reason why) {
        for (int i = 0; i < reasons.length; i++) {
            if (set.has(i) && !has(i)) {
                boolean free = ((locked >> i) & 1) == 0;
                closed |= free ? 1 << i : 0;
                reasons[i] = free ? why : lockedBy(i);
            }
        }
    }

    void forbid(RelaySet set, Reason why) {
        for (int i = 0; i < reasons.length; i++) {
            if (set.has(i) && has(i)) {
                closed &= ~(1 << i);
                reasons[i] = why;
            }
        }
    }

    void lock(RelaySet set, Reason why) {
        forbid(set, why);
        if (!set.isEmpty()) {
            locked |= set.bits();
            locks = locks.isEmpty() ? new ArrayList<>() : locks;
            locks.add(new Lock(set, why));
        }
    }

    /** It would run but for this: what was asked for it before is no longer why it rests. */
    private Reason lockedBy(int machine) {
        for (Lock lock : locks) {
            if (lock.set.has(machine)) {
                return lock.why;
            }
        }
        return reasons[machine];
    }

    RelaySet overruled() {
        return RelaySet.of(closed ^ wish.bits());
    }

    List<Reason> reasons() {
        return Arrays.asList(reasons);
    }
}
