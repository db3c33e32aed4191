package rimeward.sim.run;

import rimeward.sim.check.Facts;
import rimeward.sim.check.Invariants;
import rimeward.sim.world.Truth;
import rimeward.site.Role;
import rimeward.site.Site;

/** Adds up one run; for one thread. */
final class Sums {
    private static final double J_PER_KWH = 3.6e6;
    private static final long MINUTE_S = 60;
    private static final long DAY_S = 86_400;

    private final Site site;
    private final Truth truth;
    private final long offsetS;
    private final double floorC;
    private final double rhTargetPercent;
    private double lowestC = Double.POSITIVE_INFINITY;
    private int lowestBench;
    private long lowestEpochS;
    private double lowestLossWPerK;
    private long belowFloorS;
    private long filmAtDewS;
    private long benchAtDewS;
    private long aboveRhTargetS;
    private double cost;
    private double paidJ;
    private long paidMinute = Long.MIN_VALUE;

    Sums(Site site, Truth truth, long offsetS) {
        this.site = site;
        this.truth = truth;
        this.offsetS = offsetS;
        floorC = site.floorC();
        rhTargetPercent = site.targets().rhPercent();
    }

    /** As a tick begins: what is true now counts for all of it. */
    void begin(Facts now, int coldestBench, long lastsS) {
        if (now.coldestC < lowestC) {
            lowestC = now.coldestC;
            lowestBench = coldestBench;
            lowestEpochS = now.epochS;
            lowestLossWPerK = truth.heatLossWPerK();
        }
        belowFloorS += now.coldestC < floorC ? lastsS : 0;
        filmAtDewS += truth.isFilmAtDewPoint() ? lastsS : 0;
        double rhPercent = truth.benchRhPercent(coldestBench);
        benchAtDewS += rhPercent >= 100 ? lastsS : 0; // air and leaves there are as cold as the dew point
        aboveRhTargetS += rhPercent > rhTargetPercent ? lastsS : 0;
        long minute = Math.floorDiv(now.epochS + offsetS, MINUTE_S);
        if (minute != paidMinute) {
            pay(minute);
        }
    }

    /** What was used since the last full minute is paid at that minute's price. */
    private void pay(long minute) {
        double usedJ = 0;
        for (int i = 0; i < truth.machines(); i++) {
            usedJ += truth.energyJ(i);
        }
        if (paidMinute != Long.MIN_VALUE) {
            int minuteOfDay = (int) Math.floorMod(paidMinute, DAY_S / MINUTE_S);
            cost += (usedJ - paidJ) / J_PER_KWH * site.tariff().pricePerKWh(minuteOfDay);
        }
        paidJ = usedJ;
        paidMinute = minute;
    }

    Summary summary(Invariants checks, Switches switches, long endEpochS, int alerts) {
        pay(Math.floorDiv(endEpochS + offsetS, MINUTE_S));
        return new Summary(
                lowestC,
                truth.benchName(lowestBench),
                lowestEpochS,
                belowFloorS,
                checks.gapS(),
                filmAtDewS,
                benchAtDewS,
                aboveRhTargetS,
                kWh(Role.HEATER_STAGE),
                kWh(Role.DRYER),
                kWh(Role.VENT_FAN),
                cost,
                site.tariff().currency(),
                truth.collectedKg(), // a kilogram is a litre
                switches.uses(endEpochS, truth),
                alerts,
                truth.heat().closure(),
                truth.water().closure(),
                checks.breaches(),
                shortfall());
    }

    private double kWh(Role role) {
        double sumJ = 0;
        for (int i = 0; i < truth.machines(); i++) {
            sumJ += site.machines().get(i).role() == role ? truth.energyJ(i) : 0;
        }
        return sumJ / J_PER_KWH;
    }

    private Shortfall shortfall() {
        double deepestK = floorC - lowestC;
        return deepestK > 0
                ? new Shortfall.Missing(deepestK, lowestEpochS, deepestK * lowestLossWPerK)
                : new Shortfall.None();
    }
}
