package rimeward.core.guard;

import java.util.EnumSet;
import java.util.Set;
import rimeward.core.decision.Cause;
import rimeward.core.judgement.Inside;
import rimeward.core.watch.Delivery;
import rimeward.site.Drying;
import rimeward.site.Machine;
import rimeward.site.RelaySet;
import rimeward.site.Role;
import rimeward.site.Site;

/**
 * The properties of one guard step, written down a second time and in other words than the guard's own code. Only still air
 * is used, so the band is floor + margin to floor + margin + differential.
 */
final class Properties {
    private static final Set<Cause> MAY_CUT_SHORT = EnumSet.of(
            Cause.TOO_HOT,
            Cause.TOO_HOT_UNSEEN,
            Cause.OVERLOAD,
            Cause.TANK_FULL,
            Cause.TOO_COLD_FOR_DRYER,
            Cause.DRYER_BLIND,
            Cause.DRYER_RESTS,
            Cause.STANDS_DOWN);

    /** What may keep a dryer from being the last source of heat. */
    private static final Set<Cause> KEEPS_DRYER_OFF = EnumSet.of(
            Cause.TANK_FULL,
            Cause.TOO_COLD_FOR_DRYER,
            Cause.DRYER_BLIND,
            Cause.DRYER_RESTS,
            Cause.MIN_REST,
            Cause.START_SPACING,
            Cause.STAGGER,
            Cause.STANDS_DOWN);

    private final Site site;
    private final double onC;
    private final double offC;

    Properties(Site site) {
        this.site = site;
        onC = site.floorC() + site.targets().guardMarginK();
        offC = onC + site.targets().differentialK();
    }

    void check(GuardState was, GuardSearch.Input input, Guarded word) {
        standsDown(was, input, word);
        for (int i = 0; i < site.machines().size(); i++) {
            rests(was, input, word, i);
            explained(was, input, word, i);
        }
        lostHeat(was, input, word);
        noGap(was, input, word);
        circuit(was, input, word);
        hot(was, input, word);
    }

    /** P0: who stands down is open, says so, and comes back when its time is over and no sooner; it goes before all else. */
    private void standsDown(GuardState was, GuardSearch.Input input, Guarded word) {
        for (int i = 0; i < site.machines().size(); i++) {
            double leftS = Math.max(0, was.standDowns().leftS(i) - GuardSearch.DT_S);
            boolean down = leftS > 0;
            require(!down || !word.closed().has(i), "P0 closed in service", was, input, word);
            boolean says = word.reasons().get(i).cause() == Cause.STANDS_DOWN;
            require(says == down, "P0 not said", was, input, word);
            require(word.next().standDowns().leftS(i) == leftS, "P0 time", was, input, word);
        }
    }

    private static boolean isDown(Guarded word, int machine) {
        return word.next().standDowns().leftS(machine) > 0;
    }

    /** Whether every heater stage stands down: then the dryer is all there is, if it may run. */
    private boolean heaterDown(Guarded word) {
        return word.next().standDowns().machines().and(site.heaterStages()).equals(site.heaterStages());
    }

    private boolean needed(GuardState was, Inside.Seen seen) {
        return seen.coldestC() <= onC || (was.needed() && seen.coldestC() < offC);
    }

    private boolean isHot(GuardState was, Inside inside) {
        if (inside instanceof Inside.Seen seen) {
            return seen.hottestC() >= site.targets().hotC()
                    || (was.hot() && seen.hottestC() >= site.targets().hotC() - 1);
        }
        return ((Inside.Unseen) inside).tooHot();
    }

    private void noGap(GuardState was, GuardSearch.Input input, Guarded word) {
        if (input.inside() instanceof Inside.Seen seen && needed(was, seen) && !isHot(was, seen)) {
            boolean heater = word.closed().meets(site.heaterStages());
            boolean dryer =
                    word.closed().and(was.closed()).meets(site.dryerRelay()) && input.dryerSeen() == Delivery.GIVING;
            boolean lastResort =
                    input.heaterSeen() == Delivery.NOT_GIVING && word.closed().meets(site.dryerRelay());
            boolean onlyDryer = heaterDown(word) && (word.closed().meets(site.dryerRelay()) || dryerKeptOff(word));
            require(heater || dryer || lastResort || onlyDryer, "P2 gap", was, input, word);
            Holder other = word.closed().meets(site.dryerRelay()) ? Holder.DRYER : Holder.NOBODY;
            require(word.holder() == (heater ? Holder.HEATER : other), "P2 holder", was, input, word);
        }
    }

    private boolean dryerKeptOff(Guarded word) {
        int dryer = site.heater().stages().size();
        return site.dryerRelay().isEmpty()
                || KEEPS_DRYER_OFF.contains(word.reasons().get(dryer).cause());
    }

    private void circuit(GuardState was, GuardSearch.Input input, Guarded word) {
        double loadW = site.ratedW(word.closed());
        if (site.drying() instanceof Drying.Dryer dryer && !word.closed().meets(site.dryerRelay())) {
            int place = site.heater().stages().size();
            boolean runsOn = was.closed().has(place)
                    || was.clocks().get(place).sinceSwitchS() + GuardSearch.DT_S < dryer.runOnS();
            loadW += runsOn ? dryer.fanW() : 0;
        }
        require(loadW <= site.circuit().limitW(), "P3 circuit " + loadW + " W", was, input, word);
    }

    private void hot(GuardState was, GuardSearch.Input input, Guarded word) {
        if (isHot(was, input.inside())) {
            RelaySet heat = site.heaterStages().or(site.dryerRelay());
            require(!word.closed().meets(heat), "P5 heat above the hot limit", was, input, word);
        }
    }

    /** P6: when the heater is seen not to give, every stage is tried, as far as the circuit bears it. */
    private void lostHeat(GuardState was, GuardSearch.Input input, Guarded word) {
        boolean lost = was.closed().meets(site.heaterStages()) && input.heaterSeen() == Delivery.NOT_GIVING;
        if (lost && input.inside() instanceof Inside.Seen seen && needed(was, seen) && !isHot(was, seen)) {
            for (int i = 0; i < site.heater().stages().size(); i++) {
                Cause why = word.reasons().get(i).cause();
                boolean excused = why == Cause.OVERLOAD || why == Cause.STAGGER || isDown(word, i);
                require(word.closed().has(i) || excused, "P6 stage not tried", was, input, word);
            }
        }
    }

    private void rests(GuardState was, GuardSearch.Input input, Guarded word, int i) {
        Machine machine = site.machines().get(i);
        double sinceSwitchS = was.clocks().get(i).sinceSwitchS() + GuardSearch.DT_S;
        double sinceStartS = was.clocks().get(i).sinceStartS() + GuardSearch.DT_S;
        boolean started = !was.closed().has(i) && word.closed().has(i);
        boolean stopped = was.closed().has(i) && !word.closed().has(i);
        Cause why = word.reasons().get(i).cause();
        if (stopped && !MAY_CUT_SHORT.contains(why)) {
            require(sinceSwitchS >= machine.minOnS(), "P4 run cut short", was, input, word);
            require(
                    machine.role() != Role.HEATER_STAGE || sinceStartS + machine.minRestS() >= machine.startSpacingS(),
                    "P7 no start in hand",
                    was,
                    input,
                    word);
        }
        boolean early = sinceSwitchS < machine.minRestS() || sinceStartS < machine.startSpacingS();
        if (started && early) {
            boolean forFloor =
                    machine.role() == Role.HEATER_STAGE && word.next().needed();
            require(forFloor, "P4/P7 started too soon", was, input, word);
        }
    }

    private void explained(GuardState was, GuardSearch.Input input, Guarded word, int i) {
        boolean overruled = word.closed().has(i) != input.wish().has(i);
        require(overruled == word.overruled().has(i), "P8 overruled set", was, input, word);
        if (overruled) {
            require(word.reasons().get(i).cause() != Cause.ASKED, "P8 no reason", was, input, word);
        }
    }

    private static void require(boolean holds, String property, Object was, Object input, Guarded word) {
        if (!holds) {
            throw new AssertionError(property + "\n  was   " + was + "\n  input " + input + "\n  word  " + word);
        }
    }
}
