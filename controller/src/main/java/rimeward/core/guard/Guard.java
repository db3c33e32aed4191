package rimeward.core.guard;

import rimeward.core.decision.Cause;
import rimeward.core.decision.Decision;
import rimeward.core.decision.FloorBand;
import rimeward.core.decision.Reason;
import rimeward.core.judgement.Inside;
import rimeward.core.judgement.Judgement;
import rimeward.core.tunnel.TunnelModel;
import rimeward.core.watch.Deliveries;
import rimeward.core.watch.Delivery;
import rimeward.site.Drying;
import rimeward.site.RelaySet;
import rimeward.site.Site;

/**
 * The last word, and the only place that overrules a law: what may not be on, and what may not be off. Pure: {@link #step}
 * is a function of its arguments and of the site alone.
 *
 * <p>The rules run from weak to strong, so that a later one may undo an earlier: the machines' own comfort, the dryer's
 * lock-outs, the hot limit, the floor and the no-gap rule, the circuit. What a rule did stands beside it as a reason.
 *
 * <p>One thing goes before all of them: a machine that stands down for service stays open, though the plants freeze, because
 * somebody's hands may be inside it. The others go on as if it had failed: they take the warm duty in the same tick. So the floor and
 * the no-gap rule hold only as far as the machines do that are left.
 */
public final class Guard {
    /** The hot limit and the dryer's cold lock-out let go this far on the safe side, K. Common practice, no source. */
    static final double CLEAR_K = 1;

    /** How long a dryer rests that ran without drying, s: long enough to thaw a coil. Common practice, no source. */
    static final double DRYER_REST_S = 1800;

    /** Below this share of the guard margin, and still falling, every source of heat runs. Own choice. */
    private static final double NEAR_SHARE = 0.4;

    private final Site site;
    private final RelaySet heater;
    private final RelaySet dryer;
    private final double floorC;
    private final Comfort comfort;
    private final CircuitRule circuit;

    public Guard(Site site) {
        this.site = site;
        heater = site.heaterStages();
        dryer = site.dryerRelay();
        floorC = site.floorC();
        comfort = new Comfort(site);
        circuit = new CircuitRule(site);
    }

    /**
     * The last word on one decision.
     *
     * @param outsideC outside temperature, seen or assumed, °C; used while blind
     * @param dtS since the last tick, s
     */
    public Guarded step(
            GuardState was,
            Decision decision,
            Judgement judgement,
            Deliveries deliveries,
            TunnelModel tunnel,
            double outsideC,
            double dtS) {
        LastWord word = new LastWord(decision, site.machines().size());
        Inside inside = judgement.inside();
        StandDowns standDowns = was.standDowns().after(dtS);
        RelaySet down = standDowns.machines();
        takeOut(word, standDowns);
        boolean hot = isHot(was, inside);
        boolean dryerTooCold = isTooColdForDryer(was, inside);
        double dryerRestLeftS = deliveries.dryerInVain() ? DRYER_REST_S : StrictMath.max(0, was.dryerRestLeftS() - dtS);
        double blindW = inside instanceof Inside.Unseen ? BlindCycle.neededW(site, tunnel, outsideC) : 0;

        if (inside instanceof Inside.Unseen) {
            runBlind(word, deliveries.failed().or(down), blindW, was.blindPhaseS());
        }
        comfort.apply(word, was, dtS);
        lockDryer(word, judgement, dryerTooCold, dryerRestLeftS);
        if (hot) {
            word.lock(heater.or(dryer), hotReason(inside));
        }
        boolean needed = blindW > 0;
        if (inside instanceof Inside.Seen seen) {
            FloorBand band = FloorBand.of(site, tunnel, seen);
            needed = band.needed(was.needed());
            if (needed) {
                hold(word, was, seen, band, deliveries, heater.minus(down));
            }
        }
        RelaySet stuck = deliveries.stuck();
        circuit.shed(word, was, needed, weakerThanTheDryer(deliveries), stuck, dtS);
        circuit.startOneAtATime(word, was, deliveries.failed(), dtS);

        RelaySet closed = word.closed();
        boolean started = !closed.minus(was.closed()).isEmpty();
        GuardState next = new GuardState(
                closed,
                was.clocksAfter(closed, dtS),
                needed,
                hot,
                dryerTooCold,
                dryerRestLeftS,
                started ? 0 : MachineClock.sum(was.sinceAnyStartS(), dtS),
                inside instanceof Inside.Unseen ? BlindCycle.phaseS(site, was.blindPhaseS() + dtS) : 0,
                standDowns);
        boolean dryerGives = closed.meets(dryer) && deliveries.any(dryer, Delivery.GIVING);
        Holder holder = !needed && dryerGives && wouldBeNeeded(inside, tunnel, outsideC)
                ? Holder.DRYER
                : holder(closed.or(stuck), heater.minus(down), inside, needed, hot);
        return new Guarded(closed, word.overruled(), word.reasons(), holder, next);
    }

    private void takeOut(LastWord word, StandDowns standDowns) {
        for (int i = 0; !standDowns.machines().isEmpty() && i < site.machines().size(); i++) {
            if (standDowns.machines().has(i)) {
                word.takeOut(i, new Reason(Cause.STANDS_DOWN, StrictMath.ceil(standDowns.leftS(i) / 60), 0));
            }
        }
    }

    /** A failed stage makes room for the dryer; but a dryer that gives nothing either is no reason not to try the stage again. */
    private RelaySet weakerThanTheDryer(Deliveries deliveries) {
        return deliveries.any(dryer, Delivery.NOT_GIVING) ? RelaySet.none() : deliveries.failedLately();
    }

    /** Whether free-float would reach the heater's band within the hour: then whoever gives heat now holds the duty. */
    private boolean wouldBeNeeded(Inside inside, TunnelModel tunnel, double outsideC) {
        double onC = floorC + site.targets().guardMarginK();
        return inside instanceof Inside.Seen seen && tunnel.freeFloatAfterHourC(seen.coldestC(), outsideC) <= onC;
    }

    /**
     * Blind, the heater holds the duty through the pauses of its cycle too. Nobody holds it only where a machine that cannot be
     * switched off leaves the circuit no room, or where every stage stands down and the dryer may not run.
     *
     * @param stages of the heater that are in use
     */
    private Holder holder(RelaySet running, RelaySet stages, Inside inside, boolean needed, boolean hot) {
        if (!needed) {
            return Holder.NOT_NEEDED;
        }
        if (hot) {
            return Holder.BARRED;
        }
        if (running.meets(heater) || (inside instanceof Inside.Unseen && !stages.isEmpty())) {
            return Holder.HEATER;
        }
        return running.meets(dryer) ? Holder.DRYER : Holder.NOBODY;
    }

    // ---- the hot limit

    private boolean isHot(GuardState was, Inside inside) {
        if (inside instanceof Inside.Seen seen) {
            return seen.hottestC() >= site.targets().hotC() - (was.hot() ? CLEAR_K : 0);
        }
        return ((Inside.Unseen) inside).tooHot();
    }

    private Reason hotReason(Inside inside) {
        return inside instanceof Inside.Seen seen
                ? new Reason(Cause.TOO_HOT, seen.hottestC(), site.targets().hotC())
                : Reason.of(Cause.TOO_HOT_UNSEEN);
    }

    // ---- the dryer's lock-outs

    private void lockDryer(LastWord word, Judgement judgement, boolean tooCold, double restLeftS) {
        if (!(site.drying() instanceof Drying.Dryer spec)) {
            return;
        }
        if (judgement.tankFull()) {
            word.lock(dryer, Reason.of(Cause.TANK_FULL));
        }
        if (restLeftS > 0) {
            word.lock(dryer, new Reason(Cause.DRYER_RESTS, (DRYER_REST_S - restLeftS) / 60, DRYER_REST_S / 60));
        }
        if (judgement.inside() instanceof Inside.Seen seen) {
            if (tooCold) {
                word.lock(dryer, new Reason(Cause.TOO_COLD_FOR_DRYER, seen.middleC(), spec.minimumAirC()));
            }
        } else {
            word.lock(dryer, Reason.of(Cause.DRYER_BLIND));
        }
    }

    private boolean isTooColdForDryer(GuardState was, Inside inside) {
        return site.drying() instanceof Drying.Dryer spec
                && inside instanceof Inside.Seen seen
                && seen.middleC() < spec.minimumAirC() + (was.dryerTooCold() ? CLEAR_K : 0);
    }

    // ---- the floor, and the no-gap rule

    /**
     * The warm duty is needed: it has a holder in this very tick. The dryer may hold it alone only while a meter shows that
     * it gives heat and the floor is not near: a dryer that nobody can see is never trusted with the floor, unless it is all there is.
     *
     * @param stages of the heater that are in use
     */
    private void hold(
            LastWord word, GuardState was, Inside.Seen seen, FloorBand band, Deliveries deliveries, RelaySet stages) {
        double nearC = floorC + NEAR_SHARE * site.targets().guardMarginK();
        boolean near = (seen.coldestC() <= nearC && band.aheadC() <= seen.coldestC()) || band.aheadC() <= floorC;
        if (!deliveries.failed().isEmpty()) {
            word.demand(heater.or(dryer), new Reason(Cause.HEAT_LOST, seen.coldestC(), floorC));
        } else if (near) {
            Reason why = new Reason(Cause.FLOOR_NEAR, seen.coldestC(), floorC);
            word.demand(heater, why);
            if (was.closed().and(stages).equals(stages)
                    && was.sinceAnyStartS() >= site.heater().deadTimeS()) {
                word.demand(dryer, why); // every stage has had its time, and is not enough
            }
        }
        boolean dryerHolds =
                word.closed().and(was.closed()).meets(dryer) && deliveries.any(dryer, Delivery.GIVING) && !near;
        if (!dryerHolds && !word.closed().meets(heater)) {
            RelaySet first = RelaySet.of(Integer.lowestOneBit(stages.bits()));
            word.demand(stages.isEmpty() ? dryer : first, gapReason(band));
        }
    }

    private static Reason gapReason(FloorBand band) {
        if (band.coldestC() < band.offC()) {
            return new Reason(Cause.NO_GAP, band.coldestC(), band.offC());
        }
        double limitC = band.aheadC() <= band.onC() ? band.onC() : band.offC();
        return new Reason(Cause.NO_GAP_SOON, band.aheadC(), limitC);
    }

    /** Without eyes the law is not asked about the heater: the tunnel model is. */
    private void runBlind(LastWord word, RelaySet failed, double neededW, double phaseS) {
        RelaySet stages = BlindCycle.stages(site, failed, neededW, phaseS);
        Reason why = new Reason(Cause.BLIND_CYCLE, neededW, site.heater().ratedW());
        word.demand(stages, why);
        word.forbid(heater.minus(stages), why);
    }
}
