package rimeward.core;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import rimeward.core.decision.Cause;
import rimeward.core.decision.ControlLaw;
import rimeward.core.decision.Decision;
import rimeward.core.decision.DutyLaw;
import rimeward.core.decision.LawState;
import rimeward.core.decision.Reason;
import rimeward.core.decision.Situation;
import rimeward.core.guard.Guard;
import rimeward.core.guard.Guarded;
import rimeward.core.judgement.Judge;
import rimeward.core.judgement.Judged;
import rimeward.core.judgement.Judgement;
import rimeward.core.judgement.Outside;
import rimeward.core.outlook.Outlook;
import rimeward.core.reading.Frame;
import rimeward.core.tunnel.TunnelModel;
import rimeward.core.watch.EffectWatch;
import rimeward.core.watch.Watched;
import rimeward.site.RelaySet;
import rimeward.site.Site;

/**
 * One tick from start to finish: judge, watch, decide, guard. Each hands on one immutable value; nothing reaches back. Pure:
 * no clock, no input or output, no logging, no randomness. The Pi, the simulator, the replay and the tests all call this.
 */
public final class ControlCycle implements ControlStep {
    /** Before any outside temperature was ever seen, this far below the floor is assumed, K. Own choice. */
    private static final double UNKNOWN_OUTSIDE_K = 10;

    /** The remembered cold is forgotten at this pace, K/s: 3 K a day. Own choice. */
    private static final double FORGET_K_PER_S = 3.0 / 86_400;

    private final Site site;
    private final ControlLaw law;
    private final TunnelModel tunnel;
    private final Judge judge;
    private final EffectWatch watch;
    private final Guard guard;

    public ControlCycle(Site site, ControlLaw law) {
        this.site = site;
        this.law = law;
        tunnel = TunnelModel.assumed(site);
        judge = new Judge(site);
        watch = new EffectWatch(site);
        guard = new Guard(site);
    }

    @Override
    public ControlState start() {
        return ControlState.start(site, law, site.floorC() - UNKNOWN_OUTSIDE_K);
    }

    @Override
    public ControlStep at(Site other) {
        return new ControlCycle(other, law);
    }

    @Override
    public Stepped step(ControlState before, Frame frame, Outlook outlook) {
        double dtS = before.pulse().sinceS(frame.tick());
        double outageS = before.pulse().outageS(frame.tick());
        ControlState was = outageS > 0 ? before.afterOutage(site) : before;
        Judged judged = judge.judge(was.judge(), frame, dtS);
        Judgement judgement = judged.judgement();
        RelaySet closed = was.guard().closed();
        double watchedS = outageS > 0 ? 0 : dtS; // what machines did without a controller says nothing of its commands
        RelaySet down = was.guard().standDowns().machines();
        Watched watched = watch.watch(was.watch(), judgement, frame.senses().powersW(), closed, down, tunnel, watchedS);
        Situation situation = new Situation(site, dtS, judgement, outlook, tunnel, closed, watched.deliveries());
        Optional<Decision> decided = decide(situation, was.law());
        boolean failed = decided.isEmpty();
        Decision decision = decided.orElseGet(() -> nothing(was.law()));
        double assumedOutsideC = assumedOutsideC(was, judgement, dtS);
        Guarded guarded = guard.step(
                was.guard(),
                decision,
                judgement,
                watched.deliveries(),
                tunnel,
                outsideC(judgement, outlook, assumedOutsideC),
                dtS);
        Outcome outcome = new Outcome(
                frame, outageS, judgement, watched.deliveries(), outlook, decision, failed, guarded, site.floorC());
        ControlState next = new ControlState(
                before.pulse().after(frame.tick()),
                judged.next(),
                watched.next(),
                decision.next(),
                guarded.next(),
                assumedOutsideC);
        return new Stepped(outcome, next);
    }

    /** A law may come from anywhere: what it throws, and an answer that the guard cannot work with, count as no decision. */
    private Optional<Decision> decide(Situation situation, LawState state) {
        try {
            Decision decision = law.decide(situation, state);
            int all = (1 << site.machines().size()) - 1;
            boolean sound = (decision.wish().bits() & ~all) == 0
                    && decision.reasons().size() == site.machines().size();
            return sound ? Optional.of(settled(decision)) : Optional.empty();
        } catch (RuntimeException | LinkageError | AssertionError | StackOverflowError e) {
            return Optional.empty();
        }
    }

    /** Another's reasons are worked out here, where a mistake in them can still be caught; our own law's when asked for. */
    private Decision settled(Decision decision) {
        return law instanceof DutyLaw
                ? decision
                : new Decision(decision.wish(), List.copyOf(decision.reasons()), decision.next());
    }

    private Decision nothing(LawState state) {
        Reason why = Reason.of(Cause.LAW_FAILED);
        return new Decision(RelaySet.none(), Collections.nCopies(site.machines().size(), why), state);
    }

    // ---- outside, when it must be assumed

    private static double outsideC(Judgement judgement, Outlook outlook, double assumedC) {
        if (judgement.outside() instanceof Outside.Seen seen) {
            return seen.airC();
        }
        return outlook instanceof Outlook.Night night ? night.lowestOutsideC() - night.spreadK() : assumedC;
    }

    /** The coldest of late: follows every fall at once, forgets slowly. */
    private static double assumedOutsideC(ControlState was, Judgement judgement, double dtS) {
        if (!(judgement.outside() instanceof Outside.Seen seen)) {
            return was.assumedOutsideC();
        }
        return StrictMath.min(seen.airC(), was.assumedOutsideC() + FORGET_K_PER_S * dtS);
    }
}
