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
    private @Nullable Reason @Nullable [] locks; // none until a rule locks something
    private int closed;

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
        for (int i = 0; i < machines; i++) {
            if (set.has(i) && !has(i)) {
                Reason lock = locks == null ? null : locks[i];
                closed |= lock == null ? 1 << i : 0;
                say(i, lock == null ? why : lock); // it would run but for the lock: that is why it rests now
            }
        }
    }

    void forbid(RelaySet set, Reason why) {
        for (int i = 0; i < machines; i++) {
            if (set.has(i) && has(i)) {
                closed &= ~(1 << i);
                say(i, why);
            }
        }
    }

    /** The first lock on a machine is the one it tells of. */
    void lock(RelaySet set, Reason why) {
        forbid(set, why);
        if (locks == null) {
            locks = new Reason[machines];
        }
        for (int i = 0; i < machines; i++) {
            if (set.has(i) && locks[i] == null) {
                locks[i] = why;
            }
        }
    }

    /** Stronger than any lock, because it comes first; it is what the machine tells of, whatever the law thought of it. */
    void takeOut(int machine, Reason why) {
        closed &= ~(1 << machine);
        say(machine, why);
        lock(RelaySet.of(1 << machine), why);
    }

    private void say(int machine, Reason why) {
        if (reasons == null) {
            reasons = decision.reasons().toArray(new Reason[0]);
        }
        reasons[machine] = why;
    }

    RelaySet overruled() {
        return RelaySet.of(closed ^ decision.wish().bits());
    }

    List<Reason> reasons() {
        return reasons == null ? decision.reasons() : Arrays.asList(reasons);
    }
}
