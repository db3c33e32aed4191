package rimeward.core.decision;

import java.util.AbstractList;
import java.util.Collections;
import rimeward.core.judgement.Damp;
import rimeward.core.judgement.Inside;
import rimeward.core.judgement.Judgement;
import rimeward.core.judgement.Outside;
import rimeward.site.Drying;
import rimeward.site.RelaySet;
import rimeward.site.Site;

/**
 * Our law. Two duties, warm and dry, each needed or not, each with a holder: the heater keeps the floor, the dryer dries;
 * and where the air is damp and {@link DryerHeat} does the heater's work for less, the dryer warms too, from a little
 * higher up, so that the heater stands ready beneath it.
 */
public final class DutyLaw implements ControlLaw {
    private final WarmChoice choice;

    /** By what costs less. */
    public DutyLaw() {
        this(DryerHeat::pays);
    }

    /** By another choice, to compare with; it goes by the same name. */
    public DutyLaw(WarmChoice choice) {
        this.choice = choice;
    }

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
        return new Thought(now, was, inside, choice).decision();
    }

    /** One tick's thinking: the duties first, then a wish and a reason for each machine. */
    private static final class Thought {
        private final Situation now;
        private final Site site;
        private final Judgement judgement;
        private final Inside.Seen inside;
        private final FloorBand band;
        private final WarmChoice choice;
        private final DutyState next;

        Thought(Situation now, DutyState was, Inside.Seen inside, WarmChoice choice) {
            this.choice = choice;
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
            double keepsK = was.dryerWarms() ? DryerHeat.SWING_K : 0;
            return site.drying() instanceof Drying.Dryer dryer
                    && judgement.damp() instanceof Damp.Seen
                    && judgement.outside() instanceof Outside.Seen outside
                    && dry.rhPercent() >= site.targets().dryOffPercent()
                    && inside.coldestC() < band.onC() + DryerHeat.RESERVE_K + keepsK
                    && mayWarm(DryerHeat.of(now, dryer, outside.airC(), driesAnyway(dry)));
        }

        private boolean mayWarm(DryerHeat heat) {
            return heat.holds() && choice.dryer(heat);
        }

        /** In the upper half of the dry band the air will be dried soon, whoever warms: that electricity is spent either way. */
        private boolean driesAnyway(DryDuty dry) {
            return dry.rhPercent() >= site.targets().rhPercent();
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
                return warmReason(DryerHeat.of(now, dryer, outside.airC(), driesAnyway(next.dry())));
            }
            return next.dry().reason(site.targets());
        }

        private Reason warmReason(DryerHeat heat) {
            return heat.driesAnyway()
                    ? new Reason(
                            Cause.DRIES_WHILE_COLD,
                            next.dry().rhPercent(),
                            site.targets().rhPercent())
                    : new Reason(Cause.WARM_BY_DRYER, heat.electricW(), heat.heaterW());
        }
    }
}
