package rimeward.core.outlook;

import java.util.Locale;
import rimeward.core.tunnel.Figure;
import rimeward.site.Degrees;
import rimeward.site.Site;

/** A plan by the hour, for the terminal. */
final class PlanTable {
    private PlanTable() {}

    static String of(NightPlan plan, Site site) {
        Degrees degrees = site.degrees();
        LocalTimes times = new LocalTimes(site.zone());
        StringBuilder out = new StringBuilder();
        out.append(String.format(
                Locale.ROOT,
                "%-12s  %13s  %13s  %13s  %9s  %11s  %11s  %9s  %9s  %s\n",
                "from",
                "outside " + degrees.unit(),
                "all off " + degrees.unit(),
                "bench " + degrees.unit(),
                "RH %",
                "kWh",
                site.tariff().currency(),
                "water L",
                "cold",
                "warm duty (share of the hour)"));
        for (PlanHour hour : plan.hours()) {
            out.append(String.format(
                    Locale.ROOT,
                    "%-12s  %13s  %13s  %13s  %9s  %11s  %11s  %9s  %9s  %s\n",
                    times.clockAndOffset(hour.fromEpochS()),
                    temperature(hour.outsideC(), degrees),
                    temperature(hour.freeFloatC(), degrees),
                    temperature(hour.benchC(), degrees),
                    number(hour.rhPercent(), 0),
                    number(hour.kWh(), 2),
                    number(hour.cost(), 2),
                    number(hour.litres(), 1),
                    ChanceWords.percent(hour.chanceCold()),
                    duty(hour, site)));
        }
        return out.toString();
    }

    private static String temperature(Figure figureC, Degrees degrees) {
        return String.format(
                Locale.ROOT, "%.1f ± %.1f", degrees.of(figureC.value()), degrees.ofSpan(figureC.standardError()));
    }

    private static String number(Figure figure, int decimals) {
        return String.format(
                Locale.ROOT, "%." + decimals + "f ± %." + decimals + "f", figure.value(), figure.standardError());
    }

    private static String duty(PlanHour hour, Site site) {
        StringBuilder shares = new StringBuilder();
        for (int i = 0; i < hour.shares().size(); i++) {
            if (hour.shares().get(i) >= 0.005) {
                shares.append(String.format(
                        Locale.ROOT,
                        "%s%s %.0f %%",
                        shares.isEmpty() ? "" : ", ",
                        site.machineIds().get(i),
                        100 * hour.shares().get(i)));
            }
        }
        return hour.holder().inWords() + (shares.isEmpty() ? "" : " (" + shares + ")");
    }
}
