package rimeward.sim.run;

import rimeward.sim.check.Facts;
import rimeward.sim.world.Truth;
import rimeward.sim.world.World;
import rimeward.site.RelaySet;
import rimeward.site.Site;

/**
 * Looks at the truth for the checks and the sums: at temperatures as a tick begins, and at what the machines make of its commands as it
 * ends. For one thread.
 */
final class Observer {
    /** Farther above the floor nobody asks whether the heat would suffice, K. Own choice. */
    private static final double NEAR_FLOOR_K = 2;

    private final World world;
    private final Truth truth;
    private final Ability ability;
    private final long startEpochS;
    private final double nearC;
    private final Facts facts = new Facts();
    private int coldestBench;

    Observer(World world, Site site, long startEpochS) {
        this.world = world;
        this.startEpochS = startEpochS;
        truth = world.truth();
        ability = new Ability(world, site);
        nearC = site.floorC() + NEAR_FLOOR_K;
    }

    Facts facts() {
        return facts;
    }

    long nowEpochS() {
        return startEpochS + (long) world.elapsedS();
    }

    /** Which bench is the coldest now. */
    int coldestBench() {
        return coldestBench;
    }

    /** Machines that stand down for service from now on. */
    void standDown(RelaySet down) {
        ability.standDown(down);
    }

    /** As a tick, or a stretch without a controller, begins. */
    void begin(RelaySet closed) {
        facts.epochS = nowEpochS();
        facts.closed = closed;
        facts.powered = world.isControllerPowered();
        coldestBench = 0;
        facts.coldestC = truth.benchC(0);
        facts.hottestC = facts.coldestC;
        for (int i = 1; i < truth.benches(); i++) {
            double benchC = truth.benchC(i);
            if (benchC < facts.coldestC) {
                facts.coldestC = benchC;
                coldestBench = i;
            }
            facts.hottestC = Math.max(facts.hottestC, benchC);
        }
    }

    /** As it ends. */
    void end(long lastsS) {
        ability.refresh(lastsS);
        facts.lastsS = lastsS;
        facts.heaterAble = !ability.heaterStages().isEmpty();
        facts.heaterHolds = ability.heaterHolds();
        facts.dryerAble = ability.isDryerAble();
        facts.dryerGives = ability.dryerGives();
        facts.dryerRunsOn = ability.dryerRunsOn();
        facts.sensorsTruthful = ability.areSensorsTruthful();
        facts.machineFaulty = ability.isMachineFaulty();
        facts.disturbed = ability.isDisturbed();
        boolean near = facts.coldestC <= nearC;
        facts.ableW = near ? ability.ableW() : 0;
        facts.lossW = near ? truth.airLossW() : 0;
    }
}
