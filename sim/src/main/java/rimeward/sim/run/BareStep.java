package rimeward.sim.run;

import rimeward.core.ControlState;
import rimeward.core.ControlStep;
import rimeward.core.Outcome;
import rimeward.core.Stepped;
import rimeward.core.decision.ControlLaw;
import rimeward.core.decision.Decision;
import rimeward.core.decision.FloorBand;
import rimeward.core.decision.Situation;
import rimeward.core.guard.GuardState;
import rimeward.core.guard.Guarded;
import rimeward.core.guard.Holder;
import rimeward.core.judgement.Inside;
import rimeward.core.judgement.Judge;
import rimeward.core.judgement.Judged;
import rimeward.core.outlook.Outlook;
import rimeward.core.reading.Frame;
import rimeward.core.tunnel.TunnelModel;
import rimeward.core.watch.Deliveries;
import rimeward.core.watch.Delivery;
import rimeward.core.watch.EffectWatch;
import rimeward.core.watch.Watched;
import rimeward.site.RelaySet;
import rimeward.site.Site;

/**
 * One tick of a law without the guard: judge, watch, decide, and what the law wishes is done. For rivals only, which are what a grower
 * has without Rimeward. The holder is still told honestly.
 */
final class BareStep implements ControlStep {
    private final Site site;
    private final ControlLaw law;
    private final TunnelModel tunnel;
    private final Judge judge;
    private final EffectWatch watch;

    BareStep(Site site, ControlLaw law) {
        this.site = site;
        this.law = law;
        tunnel = TunnelModel.assumed(site);
        judge = new Judge(site);
        watch = new EffectWatch(site);
    }

    @Override
    public ControlState start() {
        return ControlState.start(site, law, 0);
    }

    @Override
    public ControlStep at(Site other) {
        return new BareStep(other, law);
    }

    @Override
    public Stepped step(ControlState before, Frame frame, Outlook outlook) {
        double dtS = before.pulse().sinceS(frame.tick());
        double outageS = before.pulse().outageS(frame.tick());
        ControlState was = outageS > 0 ? before.afterOutage(site) : before;
        Judged judged = judge.judge(was.judge(), frame, dtS);
        RelaySet closed = was.guard().closed();
        double watchedS = outageS > 0 ? 0 : dtS;
        Watched watched =
                watch.watch(was.watch(), judged.judgement(), frame.senses().powersW(), closed, tunnel, watchedS);
        Situation now = new Situation(site, dtS, judged.judgement(), outlook, tunnel, closed, watched.deliveries());
        Decision decision = law.decide(now, was.law());
        Guarded done = asWished(was.guard(), decision, now);
        ControlState next = new ControlState(
                before.pulse().after(frame.tick()), judged.next(), watched.next(), decision.next(), done.next(), 0);
        return new Stepped(
                new Outcome(
                        frame,
                        outageS,
                        judged.judgement(),
                        watched.deliveries(),
                        outlook,
                        decision,
                        false,
                        done,
                        site.floorC()),
                next);
    }

    private Guarded asWished(GuardState was, Decision decision, Situation now) {
        RelaySet wish = decision.wish();
        boolean needed = now.judgement().inside() instanceof Inside.Seen seen
                ? FloorBand.of(site, tunnel, seen).needed(was.needed())
                : was.needed();
        GuardState next = new GuardState(
                wish,
                was.clocks(),
                needed,
                was.hot(),
                was.dryerTooCold(),
                was.dryerRestLeftS(),
                was.sinceAnyStartS(),
                was.blindPhaseS(),
                was.standDowns());
        Holder holder = needed ? holder(wish, now.deliveries()) : Holder.NOT_NEEDED;
        return new Guarded(wish, RelaySet.none(), decision.reasons(), holder, next);
    }

    private Holder holder(RelaySet closed, Deliveries deliveries) {
        if (closed.meets(site.heaterStages())) {
            return Holder.HEATER;
        }
        boolean dryerGives = closed.meets(site.dryerRelay()) && deliveries.any(site.dryerRelay(), Delivery.GIVING);
        return dryerGives ? Holder.DRYER : Holder.NOBODY;
    }
}
