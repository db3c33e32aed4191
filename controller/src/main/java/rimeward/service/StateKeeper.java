package rimeward.service;

import org.jspecify.annotations.Nullable;
import rimeward.alert.AlertBoard;
import rimeward.core.ControlState;
import rimeward.core.ControlStep;
import rimeward.core.Stepped;
import rimeward.core.decision.ControlLaw;
import rimeward.core.guard.StandDowns;
import rimeward.core.judgement.JudgeState;
import rimeward.core.order.Standing;
import rimeward.core.watch.WatchState;
import rimeward.port.Keep;
import rimeward.record.SavedState;
import rimeward.site.RelaySet;
import rimeward.site.Site;

/**
 * Hands control's state over to be kept whenever a relay changed or something was told, and once a minute, so that little is
 * forgotten however the service ends. For the loop's thread.
 */
public final class StateKeeper {
    /** Rest times may be this much out after a power cut. Own choice. */
    private static final long EVERY_MS = 60_000;

    private final @Nullable Output output;
    private RelaySet closed = RelaySet.none();
    private long keptMs = Long.MIN_VALUE / 2;
    private double lastOutageS;

    private record Output(Site site, ControlLaw law, String boot, Keep keep) {}

    private StateKeeper(@Nullable Output output, double lastOutageS) {
        this.output = output;
        this.lastOutageS = lastOutageS;
    }

    /** Nothing outlives the loop: replays begin anew. */
    public static StateKeeper forgetful() {
        return new StateKeeper(null, 0);
    }

    /**
     * For a service that may be cut off at any moment.
     *
     * @param boot names the machine's run since it was switched on
     * @param lastOutageS as it was saved, s; 0 before the first
     */
    public static StateKeeper of(Site site, ControlLaw law, String boot, double lastOutageS, Keep keep) {
        return new StateKeeper(new Output(site, law, boot, keep), lastOutageS);
    }

    /** After a tick, at which perhaps something was told or ordered. */
    void after(Stepped stepped, AlertBoard board, Standing standing, boolean told) {
        if (output == null) {
            return;
        }
        double outageS = stepped.outcome().outageS();
        lastOutageS = outageS > 0 ? outageS : lastOutageS;
        RelaySet nowClosed = stepped.outcome().guarded().closed();
        long nowMs = stepped.outcome().frame().tick().elapsedMs();
        if (told || !nowClosed.equals(closed) || nowMs - keptMs >= EVERY_MS) {
            closed = nowClosed;
            keptMs = nowMs;
            output.keep().keep(state(output, stepped, board, standing));
        }
    }

    private SavedState state(Output to, Stepped stepped, AlertBoard board, Standing standing) {
        ControlState next = stepped.next();
        return new SavedState(
                to.boot(),
                stepped.outcome().frame().tick().wall(),
                next.pulse(),
                to.site().machineIds(),
                next.guard(),
                next.watch().failures(),
                next.judge().habits(to.site()),
                to.law().name(),
                to.law().remembered(next.law()),
                next.assumedOutsideC(),
                lastOutageS,
                board.saved(),
                standing);
    }

    /** Other settings are no reason to start a machine that somebody works on. */
    private static StandDowns standDowns(SavedState saved, Site site) {
        StandDowns found = StandDowns.NONE;
        for (int i = 0; i < site.machines().size(); i++) {
            int before = saved.machines().indexOf(site.machines().get(i).id());
            double leftS = before < 0 ? 0 : saved.guard().standDowns().leftS(before);
            found = leftS > 0 ? found.with(i, leftS, site.machines().size()) : found;
        }
        return found;
    }

    /** Control as it stood, every relay having fallen open since; afresh where the machines are other ones. */
    public static ControlState restored(SavedState saved, Site site, ControlLaw law, ControlStep control) {
        ControlState fresh = control.start();
        boolean sameMachines = saved.machines().equals(site.machineIds());
        return new ControlState(
                saved.pulse(),
                JudgeState.resume(site, saved.habits()),
                sameMachines ? WatchState.resume(site, saved.failures()) : fresh.watch(),
                saved.law().equals(law.name()) ? law.resume(site, saved.lawMemory()) : fresh.law(),
                sameMachines ? saved.guard().withAllOpen() : fresh.guard().with(standDowns(saved, site)),
                saved.assumedOutsideC());
    }
}
