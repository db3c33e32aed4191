package rimeward.core.decision;

import java.util.AbstractList;
import java.util.Collections;
import rimeward.core.judgement.Damp;
import rimeward.core.judgement.Inside;
import rimeward.core.judgement.Judgement;
import rimeward.core.judgement.Outside;
import rimeward.core.tunnel.TunnelModel;
import rimeward.site.Drying;
import rimeward.site.RelaySet;
import rimeward.site.Site;

/**
 * Our law. Two duties, warm and dry, each needed or not, each with a holder: the heater keeps the floor, the dryer dries;
 * and where the air is damp and the dryer's heat does the heater's work for less, the dryer warms too, from a little
 * higher up, so that the heater stands ready beneath it.
 */
public final class DutyLaw implements ControlLaw {
    /** Only this far above the dryer's switch-off is the air moist enough for it to keep working, %. Own choice. */
    private static final double MOIST_PERCENT = 3;

    @Override
    public String name() {
        return "duty";
    }

    @Override
    public LawState start(Site site) {
        return DutyState.START;
    }

    @Override
    public String remembered(LawState state) {
        return ((DutyState) state).toText();
    }

    @Override
    public LawState resume(Site site, String remembered) {
        return DutyState.parse(remembered);
    }

    @Override
    public Decision decide(Situation now, LawState state) {
        DutyState was = (DutyState) state;
        if (!(now.judgement().inside() instanceof Inside.Seen inside)) {
            Reason why = Reason.of(Cause.NO_AIR_KNOWN);
            return new Decision(
                    RelaySet.none(), Collections.nCopies(now.site().machines().size(), why), DutyState.START);
        }
        return new Thought(now, was, inside).decision();
    }

    /** One tick's thinking: the duties first, then a wish and a reason for each machine. */
    private static final class Thought {
        private final Situation now;
        private final Site site;
        private final Judgement judgement;
        private final Inside.Seen inside;
        private final FloorBand band;
        private final DutyState next;

        Thought(Situation now, DutyState was, Inside.Seen inside) {
            this.now = now;
            this.inside = inside;
            site = now.site();
            judgement = now.judgement();
            band = FloorBand.of(site, now.tunnel(), inside);
            DryDuty dry = dry(was);
            next = new DutyState(
                    was.warm().after(site, band, neededW(), now.dtS()),
                    dry,
                    dryerWarms(was, dry),
                    timerS(was),
                    Airing.helps(site, judgement, was.airing()));
        }

        private double timerS(DutyState was) {
            double timerS = was.timerS() + now.dtS();
            return timerS < DryTimer.periodS(site) ? timerS : 0;
        }

        /** Heat that holds the middle of the band, W; 0 where outside is not seen. */
        private double neededW() {
            return judgement.outside() instanceof Outside.Seen outside
                    ? now.tunnel().heatToHoldW((band.onC() + band.offC()) / 2, outside.airC())
                    : 0;
        }

        private DryDuty dry(DutyState was) {
            return judgement.damp() instanceof Damp.Seen damp
                    ? was.dry().after(site, inside, damp, judgement.outside(), now.dtS())
                    : DryDuty.START;
        }

        private boolean dryerWarms(DutyState was, DryDuty dry) {
            return site.drying() instanceof Drying.Dryer dryer
                    && judgement.damp() instanceof Damp.Seen
                    && judgement.outside() instanceof Outside.Seen outside
                    && dry.rhPercent() >= site.targets().dryOffPercent() + (was.dryerWarms() ? 0 : MOIST_PERCENT)
                    && inside.coldestC() < DryerHeat.RESERVE_K + band.onC() + (was.dryerWarms() ? DryerHeat.SWING_K : 0)
                    && heat(dryer, outside).pays();
        }

        private DryerHeat heat(Drying.Dryer dryer, Outside.Seen outside) {
            TunnelModel tunnel = now.tunnel();
            double holdC = site.floorC()
                    + site.targets().guardMarginK()
                    + site.targets().differentialK() / 2;
            return DryerHeat.of(site, dryer, tunnel, holdC, outside.airC());
        }

        Decision decision() {
            RelaySet firstSources = RelaySet.of((1 << next.warm().sources()) - 1);
            RelaySet dryer = dryerWished() ? site.dryerRelay() : RelaySet.none();
            RelaySet vent = airs() ? site.ventRelay() : RelaySet.none();
            RelaySet wish = firstSources.and(site.heaterStages()).or(dryer).or(vent);
            return new Decision(wish, new Reasons(), next);
        }

        /** Worked out when asked for, which is seldom: most ticks change nothing. */
        private final class Reasons extends AbstractList<Reason> {
            @Override
            public int size() {
                return site.machines().size();
            }

            @Override
            public Reason get(int machine) {
                return switch (site.machines().get(machine).role()) {
                    case HEATER_STAGE -> next.warm().reason(band, machine);
                    case DRYER -> dryerReason();
                    case VENT_FAN -> airs() ? Airing.reason(judgement) : Reason.of(Cause.NOT_ASKED);
                };
            }
        }

        private boolean airs() {
            return next.dry().needed() && next.airing();
        }

        private boolean aired() {
            return judgement.doorOpen() || (next.airing() && !site.ventRelay().isEmpty());
        }

        private boolean dryerWished() {
            if (next.warm().takesDryer(site)) {
                return true;
            }
            if (judgement.damp() instanceof Damp.Unseen) {
                return next.timerS() < DryTimer.RUN_S;
            }
            return !aired() && (next.dry().needed() || next.dryerWarms());
        }

        private Reason dryerReason() {
            if (next.warm().takesDryer(site)) {
                return next.warm().reason(band, site.heater().stages().size());
            }
            if (judgement.damp() instanceof Damp.Unseen) {
                return new Reason(Cause.DRY_BY_TIMER, DryTimer.RUN_S / 60, DryTimer.periodS(site) / 60);
            }
            if (judgement.doorOpen()) {
                return Reason.of(Cause.DOOR_OPEN);
            }
            if (aired()) {
                return Airing.reason(judgement);
            }
            boolean onlyWarms = next.dryerWarms() && !next.dry().needed();
            if (onlyWarms
                    && site.drying() instanceof Drying.Dryer dryer
                    && judgement.outside() instanceof Outside.Seen outside) {
                DryerHeat heat = heat(dryer, outside);
                return new Reason(Cause.WARM_BY_DRYER, heat.electricW(), heat.heaterW());
            }
            return next.dry().reason(site.targets());
        }
    }
}
