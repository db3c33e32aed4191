package rimeward.core.outlook;

/** What decides on the machines in a simulated night, looked at every step. Remembers what it did: one for each run. */
interface NightLaw {
    Wish wish(Sight now);

    /** One law, fresh for each run. */
    interface Maker {
        NightLaw make(World world);
    }

    /**
     * What it sees.
     *
     * @param step counts from the start
     * @param coldestC the coldest bench as the law takes it: its reading less its doubt, °C
     * @param middleC middle air, °C
     * @param rhPercent relative humidity at the coldest bench, %
     * @param dewPointC of the air, °C
     * @param outsideC °C
     */
    record Sight(int step, double coldestC, double middleC, double rhPercent, double dewPointC, double outsideC) {}

    /**
     * What it asks for.
     *
     * @param holdAirC middle air that the heater holds on average, °C; where it is not to heat, far below all
     * @param swingK how far the air swings below that between two runs, K
     * @param dryer whether the dryer is to run
     * @param dryerHelps whether the dryer joins when the heater is not enough
     */
    record Wish(double holdAirC, double swingK, boolean dryer, boolean dryerHelps) {
        static final double NO_HEAT_C = -273;
    }
}
