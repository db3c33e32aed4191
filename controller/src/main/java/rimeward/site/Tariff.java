package rimeward.site;

import java.util.List;

/** What a kilowatt-hour costs through the day, in the tariff's own currency. */
public sealed interface Tariff {
    String currency();

    /** Price at a local time of day, currency per kWh; minute 0 is midnight. */
    double pricePerKWh(int minuteOfDay);

    record Flat(String currency, double perKWh) implements Tariff {
        public Flat {
            Check.within("price per kWh", perKWh, 0, 1000);
        }

        @Override
        public double pricePerKWh(int minuteOfDay) {
            return perKWh;
        }
    }

    /** Cheaper from {@code nightFromMinute} to {@code nightToMinute}, which may pass midnight. */
    record DayNight(String currency, double dayPerKWh, double nightPerKWh, int nightFromMinute, int nightToMinute)
            implements Tariff {
        public DayNight {
            Check.within("day price per kWh", dayPerKWh, 0, 1000);
            Check.within("night price per kWh", nightPerKWh, 0, 1000);
            Check.within("nightFromMinute", nightFromMinute, 0, 1439);
            Check.within("nightToMinute", nightToMinute, 0, 1439);
        }

        @Override
        public double pricePerKWh(int minuteOfDay) {
            boolean night = nightFromMinute <= nightToMinute
                    ? minuteOfDay >= nightFromMinute && minuteOfDay < nightToMinute
                    : minuteOfDay >= nightFromMinute || minuteOfDay < nightToMinute;
            return night ? nightPerKWh : dayPerKWh;
        }
    }

    /** One price for each hour of the day, the first from midnight. */
    record Hourly(String currency, List<Double> perKWh) implements Tariff {
        public Hourly {
            perKWh = List.copyOf(perKWh);
            Check.that(perKWh.size() == 24, "an hourly tariff needs 24 prices, not " + perKWh.size());
            for (double price : perKWh) {
                Check.within("hourly price per kWh", price, -1000, 1000);
            }
        }

        @Override
        public double pricePerKWh(int minuteOfDay) {
            return perKWh.get(minuteOfDay / 60);
        }
    }
}
