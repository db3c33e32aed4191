package rimeward.sim.scenario;

import java.util.Arrays;
import java.util.Locale;

/** What can be asked of a law. Each is a number of the run's summary and an upper or a lower limit on it. */
public enum Gate {
    LEAST_BENCH_C(false, -60, 30, "lowest temperature any bench may meet, °C"),
    MOST_BELOW_FLOOR_MIN(true, 0, 1e6, "time with a bench below the floor, min"),
    MOST_GAP_S(true, 0, 1e9, "time near the floor with nobody giving heat, s"),
    MOST_BENCH_AT_DEW_MIN(true, 0, 1e6, "time with a bench at the dew point, min"),
    MOST_FILM_AT_DEW_MIN(true, 0, 1e6, "time with the film at the dew point, min"),
    MOST_ABOVE_RH_TARGET_H(true, 0, 1e5, "time above the humidity target, h"),
    MOST_TOTAL_KWH(true, 0, 1e6, "electricity, kWh"),
    MOST_COST(true, 0, 1e6, "cost, in the tariff's currency"),
    MOST_SHARE_OF_ALWAYS_ON(true, 0, 10, "electricity as a share of what always-on takes"),
    MOST_STARTS_A_DAY(true, 0, 1e4, "starts a day of the busiest relay"),
    MOST_ALERTS(true, 0, 1e4, "alerts raised"),
    MOST_BROKEN_PROPERTIES(true, 0, 8, "properties that did not hold");

    private final boolean upper;
    private final double least;
    private final double most;
    private final String says;

    Gate(boolean upper, double least, double most, String says) {
        this.upper = upper;
        this.least = least;
        this.most = most;
        this.says = says;
    }

    /** As written in a gates file; units as they are spelt there. */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replaceAll("_c$", "_C").replaceAll("_kwh$", "_kWh");
    }

    public boolean passes(double measured, double limit) {
        return upper ? measured <= limit : measured >= limit;
    }

    public String says() {
        return says;
    }

    double least() {
        return least;
    }

    double most() {
        return most;
    }

    static Gate[] all() {
        return Arrays.copyOf(values(), values().length);
    }
}
