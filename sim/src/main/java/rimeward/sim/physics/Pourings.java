package rimeward.sim.physics;

/** Water that moves at a moment and not by the second: down the cover, out of a can, out of the tank. For one thread. */
final class Pourings {
    /** Liquid a film can hold before it runs off, kg/m² (common practice, no source). */
    private static final double FILM_HOLDS_KG_PER_M2 = 0.06;

    /** One molecule of water, kg: 18.015 g/mol over Avogadro's number. Less of it there is not. */
    private static final double MOLECULE_KG = 2.99e-26;

    private final State now;
    private final WaterLedger ledger;
    private final double filmHoldsKg;
    private final double runOffToMediumShare;
    private final double mediumLowKg;
    private final double mediumFullKg;

    Pourings(TunnelParameters tunnel, State now, WaterLedger ledger) {
        this.now = now;
        this.ledger = ledger;
        filmHoldsKg = FILM_HOLDS_KG_PER_M2 * tunnel.coverM2();
        runOffToMediumShare = tunnel.runOffToMediumShare();
        mediumLowKg = tunnel.mediumLowKg();
        mediumFullKg = tunnel.mediumFullKg();
    }

    /** Lets run off what the film cannot hold, and lets the grower water what has become too dry. */
    void settle() {
        // What melts or freezes halves and halves again and never ends; a processor is slow at numbers so small.
        if (now.filmFrostKg < MOLECULE_KG) {
            now.filmWaterKg += now.filmFrostKg;
            now.filmFrostKg = 0;
        } else if (now.filmWaterKg < MOLECULE_KG) {
            now.filmFrostKg += now.filmWaterKg;
            now.filmWaterKg = 0;
        }
        if (now.filmWaterKg > filmHoldsKg) {
            runOff(now.filmWaterKg - filmHoldsKg);
        }
        if (now.mediumWaterKg < mediumLowKg) {
            pour(mediumFullKg - now.mediumWaterKg);
        }
    }

    private void runOff(double kg) {
        double toMediumKg = runOffToMediumShare * kg;
        now.filmWaterKg -= kg;
        now.mediumWaterKg += toMediumKg;
        ledger.add(WaterPath.RUN_OFF, toMediumKg - kg);
    }

    private void pour(double kg) {
        now.mediumWaterKg += kg;
        ledger.add(WaterPath.WATERING, kg);
    }

    void emptyTank() {
        ledger.add(WaterPath.EMPTYING, -now.tankKg);
        now.tankKg = 0;
    }
}
