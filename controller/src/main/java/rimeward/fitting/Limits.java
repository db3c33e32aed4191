package rimeward.fitting;

import rimeward.core.reading.Reading;
import rimeward.core.reading.Senses;
import rimeward.site.RelaySet;
import rimeward.site.Site;

/**
 * Holds the floor and the hot limit while a person has the heater in hand: near the floor every stage that the circuit carries helps,
 * above the hot limit no heat runs. Sees the benches that answer; with none, nothing is asked for.
 */
final class Limits {
    /**
     * What the limits ask for.
     *
     * @param atFloor whether not even the margin is left
     * @param helping stages that close besides; empty when none is needed, or none can
     */
    record Asked(boolean tooCold, boolean atFloor, boolean tooHot, RelaySet helping) {}

    private final Site site;
    private boolean tooCold;
    private boolean tooHot;

    Limits(Site site) {
        this.site = site;
    }

    /** @param wanted closed anyway */
    Asked look(Senses senses, RelaySet wanted) {
        double coldestC = Double.POSITIVE_INFINITY;
        double warmestC = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < site.sensors().size(); i++) {
            if (site.sensors().get(i).place().isInside()
                    && senses.sensors().get(i).airC() instanceof Reading.Value air) {
                coldestC = StrictMath.min(
                        coldestC, air.value() - site.sensors().get(i).uncertaintyK());
                warmestC = StrictMath.max(warmestC, air.value());
            }
        }
        double onC = site.floorC() + site.targets().guardMarginK();
        tooCold = coldestC <= onC || (tooCold && coldestC < onC + site.targets().differentialK());
        double hotC = site.targets().hotC();
        tooHot = warmestC >= hotC || (tooHot && warmestC > hotC - site.targets().differentialK());
        RelaySet helping = tooCold && !tooHot ? besides(wanted) : RelaySet.none();
        return new Asked(tooCold, coldestC <= site.floorC(), tooHot, helping);
    }

    private RelaySet besides(RelaySet wanted) {
        RelaySet helping = RelaySet.none();
        for (int stage = 0; stage < site.heater().stages().size(); stage++) {
            RelaySet more = wanted.or(helping).with(stage);
            if (!wanted.has(stage) && site.ratedW(more) <= site.circuit().limitW()) {
                helping = helping.with(stage);
            }
        }
        return helping;
    }

    /** What is closed in the end. */
    RelaySet apply(Asked asked, RelaySet wanted) {
        return asked.tooHot() ? wanted.minus(site.heaterStages()).minus(site.dryerRelay()) : wanted.or(asked.helping());
    }
}
