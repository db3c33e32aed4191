package rimeward.core.guard;

import rimeward.core.decision.Cause;
import rimeward.core.decision.Reason;
import rimeward.site.Drying;
import rimeward.site.RelaySet;
import rimeward.site.Site;

/** What the circuit carries: the summed load, and one start at a time. */
final class CircuitRule {
    private final Site site;
    private final double limitW;
    private final RelaySet heater;
    private final RelaySet dryer;
    private final RelaySet vent;

    CircuitRule(Site site) {
        this.site = site;
        limitW = site.circuit().limitW();
        heater = site.heaterStages();
        dryer = site.dryerRelay();
        vent = site.ventRelay();
    }

    /** Sheds until the load fits: the fan, stages that give nothing, then in the cold the dryer, else the higher stages. */
    void shed(LastWord word, GuardState was, boolean needed, RelaySet failed, double dtS) {
        double loadW = loadW(word.closed(), was, dtS);
        if (loadW <= limitW) {
            return;
        }
        Reason why = new Reason(Cause.OVERLOAD, loadW, limitW);
        word.forbid(vent, why);
        shedStages(word, failed, why, was, dtS);
        if (needed) {
            shedIfOver(word, dryer, why, was, dtS);
        }
        shedStages(word, heater, why, was, dtS);
        shedIfOver(word, dryer, why, was, dtS);
    }

    private void shedStages(LastWord word, RelaySet which, Reason why, GuardState was, double dtS) {
        for (int i = site.heater().stages().size() - 1; i >= 0; i--) {
            shedIfOver(word, which.and(RelaySet.of(1 << i)), why, was, dtS);
        }
    }

    private void shedIfOver(LastWord word, RelaySet self, Reason why, GuardState was, double dtS) {
        if (loadW(word.closed(), was, dtS) > limitW) {
            word.forbid(self, why);
        }
    }

    /** Rated power of what is closed, and of the dryer's fan while it runs on, W. */
    private double loadW(RelaySet closed, GuardState was, double dtS) {
        double loadW = site.ratedW(closed);
        if (site.drying() instanceof Drying.Dryer spec && !closed.meets(dryer) && runsOn(spec, was, dtS)) {
            loadW += spec.fanW();
        }
        return loadW;
    }

    private boolean runsOn(Drying.Dryer spec, GuardState was, double dtS) {
        int place = site.heater().stages().size();
        return was.closed().has(place) || was.clocks().get(place).sinceSwitchS() + dtS < spec.runOnS();
    }

    /** Inrush: one machine starts at a time. The stage that holds the floor goes first and waits for nobody. */
    void startOneAtATime(LastWord word, GuardState was, double dtS) {
        RelaySet starting = word.closed().minus(was.closed());
        if (starting.isEmpty()) {
            return;
        }
        double sinceS = was.sinceAnyStartS() + dtS;
        boolean holderStarts =
                starting.meets(heater) && !word.closed().and(was.closed()).meets(heater);
        boolean mayStart = holderStarts || sinceS >= site.circuit().staggerS();
        int first = Integer.lowestOneBit(starting.bits()); // heater stages come first in the site's order
        RelaySet waiting = mayStart ? starting.minus(RelaySet.of(first)) : starting;
        word.forbid(
                waiting,
                new Reason(Cause.STAGGER, mayStart ? 0 : sinceS, site.circuit().staggerS()));
    }
}
