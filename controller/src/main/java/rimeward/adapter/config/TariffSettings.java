package rimeward.adapter.config;

import java.util.List;
import java.util.Optional;
import rimeward.site.Tariff;

/** Reads {@code [tariff]}: one price, a day and a night price, or a price an hour. */
final class TariffSettings {
    private static final Kind<Double> PRICE = Kinds.number(0, 1000);
    private static final Kind<Double> HOURLY_PRICE = Kinds.number(-1000, 1000); // exchange prices can fall below zero
    private static final int HOURS = 24;

    private TariffSettings() {}

    static Optional<Tariff> read(TableReader table) {
        String currency = table.get("currency", Kinds.text());
        if (table.has("hourly_per_kWh")) {
            return hourly(table, currency);
        }
        if (table.has("day_per_kWh") || table.has("night_per_kWh")) {
            return dayNight(table, currency);
        }
        double perKWh = table.get("per_kWh", PRICE);
        return table.whenSound(() -> new Tariff.Flat(currency, perKWh));
    }

    private static Optional<Tariff> dayNight(TableReader table, String currency) {
        double dayPerKWh = table.get("day_per_kWh", PRICE);
        double nightPerKWh = table.get("night_per_kWh", PRICE);
        int fromMinute = table.get("night_from", Kinds.timeOfDay());
        int toMinute = table.get("night_to", Kinds.timeOfDay());
        if (table.isSound() && fromMinute == toMinute) {
            table.fault("night_to", "is the same as night_from, so the night price never holds", "part the two");
        }
        return table.whenSound(() -> new Tariff.DayNight(currency, dayPerKWh, nightPerKWh, fromMinute, toMinute));
    }

    private static Optional<Tariff> hourly(TableReader table, String currency) {
        List<Double> perKWh = table.list("hourly_per_kWh", HOURLY_PRICE);
        if (table.isSound() && perKWh.size() != HOURS) {
            table.fault(
                    "hourly_per_kWh",
                    "has " + perKWh.size() + " prices and must have " + HOURS,
                    "give one for each hour, the first from midnight");
        }
        return table.whenSound(() -> new Tariff.Hourly(currency, perKWh));
    }
}
