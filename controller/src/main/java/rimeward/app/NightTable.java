package rimeward.app;

import java.util.List;
import java.util.Locale;
import rimeward.record.Lowest;
import rimeward.record.Night;

/** The nights as a table for the terminal. */
final class NightTable {
    private NightTable() {}

    static String of(List<Night> nights, String currency) {
        if (nights.isEmpty()) {
            return "No night is recorded yet: the first line comes with the first ten minutes of a trusted clock.\n";
        }
        StringBuilder out = new StringBuilder();
        out.append(String.format(
                Locale.ROOT,
                "%-10s  %7s  %7s  %5s  %5s  %8s  %6s  %6s  %s\n",
                "night of",
                "bench",
                "outside",
                "seen",
                "wet",
                currency.isEmpty() ? "cost" : currency,
                "water",
                "alerts",
                "machines: kWh/starts"));
        nights.forEach(night -> out.append(line(night)));
        return out.toString();
    }

    private static String line(Night night) {
        StringBuilder machines = new StringBuilder();
        for (Night.Use use : night.machines()) {
            machines.append(String.format(Locale.ROOT, "  %s %.2f/%d", use.machine(), use.kWh(), use.starts()));
        }
        return String.format(
                Locale.ROOT,
                "%-10s  %7s  %7s  %4.1fh  %4.1fh  %8.2f  %5.1fL  %6d%s\n",
                night.evening(),
                celsius(night.bench()),
                celsius(night.outside()),
                night.seenS() / 3600,
                night.wetS() / 3600,
                night.cost(),
                night.litresEstimated(),
                night.alerts(),
                machines);
    }

    private static String celsius(Lowest lowest) {
        return lowest instanceof Lowest.Seen seen ? String.format(Locale.ROOT, "%.1f°C", seen.airC()) : "unseen";
    }
}
