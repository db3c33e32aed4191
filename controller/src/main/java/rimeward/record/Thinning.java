package rimeward.record;

import java.util.List;
import rimeward.core.Outcome;
import rimeward.core.guard.Holder;
import rimeward.core.judgement.Trust;
import rimeward.core.judgement.Verdict;
import rimeward.site.RelaySet;

/** Keeps every change and one frame a minute. Owned by one thread, the control loop's; allocates nothing where nothing changed. */
public final class Thinning {
    private static final long MINUTE_MS = 60_000;

    private boolean begun;
    private long keptMs;
    private RelaySet closed = RelaySet.none();
    private Holder holder = Holder.NOT_NEEDED;
    private Trust trust = Trust.FULL;
    private boolean tankFull;
    private boolean doorOpen;
    private List<Verdict> air = List.of();
    private List<Verdict> rh = List.of();

    /** Whether this outcome is kept; {@code told} says that an alert was raised or cleared by it. */
    public Keeping look(Outcome outcome, boolean told) {
        long nowMs = outcome.frame().tick().elapsedMs();
        boolean changed = !begun || told || outcome.outageS() > 0 || differs(outcome);
        boolean due = nowMs - keptMs >= MINUTE_MS || nowMs < keptMs;
        if (!changed && !due) {
            return Keeping.DROPPED;
        }
        remember(outcome);
        begun = true;
        keptMs = nowMs;
        return changed ? Keeping.CHANGE : Keeping.MINUTE;
    }

    private boolean differs(Outcome now) {
        var judgement = now.judgement();
        return !closed.equals(now.guarded().closed())
                || holder != now.guarded().holder()
                || trust != judgement.trust()
                || tankFull != judgement.tankFull()
                || doorOpen != judgement.doorOpen()
                || !air.equals(judgement.airVerdicts())
                || !rh.equals(judgement.rhVerdicts());
    }

    private void remember(Outcome now) {
        closed = now.guarded().closed();
        holder = now.guarded().holder();
        trust = now.judgement().trust();
        tankFull = now.judgement().tankFull();
        doorOpen = now.judgement().doorOpen();
        air = now.judgement().airVerdicts();
        rh = now.judgement().rhVerdicts();
    }
}
