package rimeward.app;

import java.util.List;
import java.util.Locale;
import rimeward.core.outlook.PlanPromise;
import rimeward.record.Lowest;
import rimeward.record.Night;
import rimeward.record.PlanScore;

/** The nights as a table for the terminal. */
final class NightTable {
    private NightTable() {}

    /** @param plans what was planned for some of them; a night that was planned has its score below it */
    static String of(List<Night> nights, List<PlanPromise> plans, String currency) {
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
        for (Night night : nights) {
            out.append(line(night));
            plans.stream()
                    .filter(plan -> plan.evening().equals(night.evening()))
                    .forEach(plan -> out.append(score(plan, night, currency)));
        }
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

    private static String score(PlanPromise plan, Night night, String currency) {
        return "            what came less what was planned: "
                + PlanScore.of(plan, night).inWords(currency) + "\n";
    }

    private static String celsius(Lowest lowest) {
        return lowest instanceof Lowest.Seen seen ? String.format(Locale.ROOT, "%.1f°C", seen.airC()) : "unseen";
    }
}
