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

    /**
     * Sheds until the load fits: the fan, stages that give nothing, then in the cold the dryer, else the higher stages.
     *
     * @param stuck machines that run though their relays should be open
     */
    void shed(LastWord word, GuardState was, boolean needed, RelaySet failed, RelaySet stuck, double dtS) {
        Load load = new Load(stuck, runsOn(was, dtS));
        double loadW = load.withW(word.closed());
        if (loadW <= limitW) {
            return;
        }
        Reason why = new Reason(Cause.OVERLOAD, loadW, limitW);
        word.forbid(vent, why);
        shedStages(word, failed, why, load);
        if (needed) {
            shedIfOver(word, dryer, why, load);
        }
        shedStages(word, heater, why, load);
        shedIfOver(word, dryer, why, load);
    }

    private void shedStages(LastWord word, RelaySet which, Reason why, Load load) {
        for (int i = site.heater().stages().size() - 1; i >= 0; i--) {
            shedIfOver(word, which.and(RelaySet.of(1 << i)), why, load);
        }
    }

    private void shedIfOver(LastWord word, RelaySet self, Reason why, Load load) {
        if (load.withW(word.closed()) > limitW) {
            word.forbid(self, why);
        }
    }

    /** What the circuit carries beside the closed relays: machines that run on although theirs are open. */
    private final class Load {
        private final RelaySet stuck;
        private final boolean fanRunsOn;

        Load(RelaySet stuck, boolean fanRunsOn) {
            this.stuck = stuck;
            this.fanRunsOn = fanRunsOn;
        }

        /** Rated power with these relays closed, W. */
        double withW(RelaySet closed) {
            RelaySet running = closed.or(stuck);
            double ranOnW =
                    site.drying() instanceof Drying.Dryer spec && fanRunsOn && !running.meets(dryer) ? spec.fanW() : 0;
            return site.ratedW(running) + ranOnW;
        }
    }

    /** Whether the dryer's fan runs on, should its relay be open now. */
    private boolean runsOn(GuardState was, double dtS) {
        int place = site.heater().stages().size();
        return site.drying() instanceof Drying.Dryer spec
                && (was.closed().has(place) || was.clocks().get(place).sinceSwitchS() + dtS < spec.runOnS());
    }

    /**
     * Inrush: one machine starts at a time. The stage that holds the floor goes first and waits for nobody; a stage that is known
     * to give nothing holds nothing.
     */
    void startOneAtATime(LastWord word, GuardState was, RelaySet failed, double dtS) {
        RelaySet starting = word.closed().minus(was.closed());
        if (starting.isEmpty()) {
            return;
        }
        double sinceS = was.sinceAnyStartS() + dtS;
        RelaySet able = heater.minus(failed);
        RelaySet holders = starting.meets(able) ? starting.and(able) : starting;
        boolean holderStarts =
                starting.meets(heater) && !word.closed().and(was.closed()).meets(starting.meets(able) ? able : heater);
        boolean mayStart = holderStarts || sinceS >= site.circuit().staggerS();
        int first = Integer.lowestOneBit(holders.bits()); // heater stages come first in the site's order
        RelaySet waiting = mayStart ? starting.minus(RelaySet.of(first)) : starting;
        word.forbid(
                waiting,
                new Reason(Cause.STAGGER, mayStart ? 0 : sinceS, site.circuit().staggerS()));
    }
}
