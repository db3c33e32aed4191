package rimeward.sim.check;

import rimeward.site.RelaySet;

/**
 * What was true during one control tick: temperatures as the tick began, relays as it commanded them, and what had come of them by its
 * end. Filled anew each tick, so that a winter makes no garbage; for one thread.
 */
public final class Facts {
    /** When the tick began, s since 1970 UTC, and how long it lasted, s. */
    public long epochS;

    public long lastsS;

    /** Whether there were mains. */
    public boolean powered;

    /** Coldest and hottest bench, °C. */
    public double coldestC;

    public double hottestC;

    /** Heat that all able machines together could give within the circuit, W. */
    public double ableW;

    /** Heat that the air loses to everything but machines, W. */
    public double lossW;

    /** Whether any heater stage would give heat if closed, and whether one is so: mains, cut-out, dial and relay let it. */
    public boolean heaterAble;

    public boolean heaterHolds;

    /** Whether the dryer would give heat if asked, and whether it does: not only its fan runs. */
    public boolean dryerAble;

    public boolean dryerGives;

    /** Whether the dryer's fan runs on though its relay is open. */
    public boolean dryerRunsOn;

    /** Whether every sensor tells the truth, within what is stated of it, and has done so for a while. */
    public boolean sensorsTruthful = true;

    /** Whether some machine or relay has a fault or stands down for service, or did until a while ago. */
    public boolean machineFaulty;

    /** Whether the door stands open or the cover is torn, or did until a while ago. */
    public boolean disturbed;

    /** Relays as commanded, or as they fell without a controller. */
    public RelaySet closed = RelaySet.none();

    /** Whether the machines could give any heat at all. */
    public boolean hasCapacity() {
        return powered && (heaterAble || dryerAble);
    }

    public boolean isHeld() {
        return heaterHolds || dryerGives;
    }
}
