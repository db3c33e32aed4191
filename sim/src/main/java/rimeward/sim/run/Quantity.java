package rimeward.sim.run;

/**
 * What a {@link Trace} holds a number of in every row. All but {@link #JUDGED_C} are of the simulated truth.
 */
public enum Quantity {
    OUTSIDE_C("outsideC", "°C", 2, "outside air"),
    OUTSIDE_RH_PERCENT("outsideRhPercent", "%", 1, "outside relative humidity, over water"),
    OUTSIDE_HUMIDITY_G_PER_KG("outsideHumidityGPerKg", "g/kg", 2, "outside humidity ratio"),
    WIND_M_PER_S("windMPerS", "m/s", 1, "wind"),
    SUN_W_PER_M2("sunWPerM2", "W/m²", 0, "sun and sky on level ground"),
    COLDEST_BENCH_C("coldestBenchC", "°C", 2, "the coldest bench"),
    /** What the controller believes the coldest bench has, sensors' uncertainty taken off; see {@link Trace#hasJudged}. */
    JUDGED_C("judgedC", "°C", 2, "the coldest bench as the controller sees it"),
    AIR_C("airC", "°C", 2, "mean air"),
    MASS_C("massC", "°C", 2, "pots, slab and top soil"),
    FILM_C("filmC", "°C", 2, "the film's inner surface"),
    DEW_POINT_C("dewPointC", "°C", 2, "dew point inside, over water"),
    RH_PERCENT("rhPercent", "%", 1, "relative humidity of the mean air, over water"),
    HUMIDITY_G_PER_KG("humidityGPerKg", "g/kg", 2, "humidity ratio inside"),
    TANK_L("tankL", "L", 2, "water in the dryer's tank");

    private final String column;
    private final String unit;
    private final int decimals;
    private final String says;

    Quantity(String column, String unit, int decimals, String says) {
        this.column = column;
        this.unit = unit;
        this.decimals = decimals;
        this.says = says;
    }

    /** Name in headers, with the unit last. */
    public String column() {
        return column;
    }

    public String unit() {
        return unit;
    }

    /** Decimals worth showing. */
    public int decimals() {
        return decimals;
    }

    /** A few words for a legend. */
    public String says() {
        return says;
    }
}
