package rimeward.sim.physics;

/** The two kinds of dryer, and having none. */
public sealed interface DryerParameters {

    /** No dryer in the tunnel. */
    record None() implements DryerParameters {}

    /**
     * A rotor takes water up from cold air and is baked out again. Collection grows in proportion to the humidity above a residue, and
     * linearly with the temperature (common practice, no source: the makers' curves are near straight between 0 and 20 °C).
     *
     * @param regeneratorW power of the element that bakes the rotor, 50…5000 W
     * @param ratedKgPerH water collected at 10 °C and 80 %, 0.01…20 kg/h
     * @param residuePercent relative humidity below which it takes nothing, 0…50 %
     * @param perK relative growth of the collection with temperature, 0…0.05 1/K
     * @param warmRiseK how far the rotor must be above the air for full collection: the warm-up, 1…100 K
     * @param runOnS the fan cools the rotor for this long after a stop, 0…1800 s
     */
    record Sorption(
            DryerCase body,
            double regeneratorW,
            double ratedKgPerH,
            double residuePercent,
            double perK,
            double warmRiseK,
            double runOnS)
            implements DryerParameters {
        public Sorption {
            Require.within("regeneratorW", regeneratorW, 50, 5000);
            Require.within("ratedKgPerH", ratedKgPerH, 0.01, 20);
            Require.within("residuePercent", residuePercent, 0, 50);
            Require.within("perK", perK, 0, 0.05);
            Require.within("warmRiseK", warmRiseK, 1, 100);
            Require.within("runOnS", runOnS, 0, 1800);
        }
    }

    /**
     * A cooled coil. Collection and efficiency follow {@link WinklerCurves}.
     *
     * @param ratedKgPerDay water collected at the rating point, 26.7 °C and 60 %, 1…500 kg/d
     * @param ratedKgPerKWh its efficiency there, 0.3…5 kg/kWh
     * @param icesBelowC the coil begins to ice below this air temperature, −10…25 °C
     * @param iceLimitKg ice at which it stops to defrost, 0.05…20 kg
     * @param defrostS how long it takes to melt that, 30…7200 s
     * @param defrostW power while it does, 0…5000 W
     * @param restS the compressor must not start sooner than this after stopping, 0…1800 s
     */
    record Compressor(
            DryerCase body,
            double ratedKgPerDay,
            double ratedKgPerKWh,
            double icesBelowC,
            double iceLimitKg,
            double defrostS,
            double defrostW,
            double restS)
            implements DryerParameters {
        public Compressor {
            Require.within("ratedKgPerDay", ratedKgPerDay, 1, 500);
            Require.within("ratedKgPerKWh", ratedKgPerKWh, 0.3, 5);
            Require.within("icesBelowC", icesBelowC, -10, 25);
            Require.within("iceLimitKg", iceLimitKg, 0.05, 20);
            Require.within("defrostS", defrostS, 30, 7200);
            Require.within("defrostW", defrostW, 0, 5000);
            Require.within("restS", restS, 0, 1800);
        }
    }
}
