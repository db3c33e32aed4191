package rimeward.core.outlook;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import rimeward.core.tunnel.Figure;
import rimeward.site.Degrees;
import rimeward.site.Site;
import rimeward.site.Tariff;

/** A plan for people: a few sentences, in the grower's degrees and by the clock of the place. "Give or take" is one standard deviation. */
public final class PlanText {

    private static final double LEAST_TOLD_L = 0.05;

    private final NightPlan plan;
    private final Site site;
    private final Degrees degrees;
    private final LocalTimes times;

    private PlanText(NightPlan plan, Site site) {
        this.plan = plan;
        this.site = site;
        degrees = site.degrees();
        times = new LocalTimes(site.zone());
    }

    /** Heading, sentences, the table by the hour, and what it rests on. */
    public static String sheet(NightPlan plan, Site site) {
        PlanText text = new PlanText(plan, site);
        StringBuilder out = new StringBuilder();
        out.append(site.name()).append(", ").append(text.span()).append("\n\n");
        sentences(plan, site).forEach(line -> out.append(line).append('\n'));
        out.append('\n').append(PlanTable.of(plan, site));
        out.append("\nIt rests on: ").append(plan.basis().inWords()).append(".\n");
        out.append("\"±\" and \"give or take\" are one standard deviation. The sun is left out. A plan changes nothing:"
                + " the heat goes by what the sensors show.\n");
        return out.toString();
    }

    /** Will the floor hold, who holds it, what it costs, the tank, what to do; the first says so where all is a guess. */
    public static List<String> sentences(NightPlan plan, Site site) {
        PlanText text = new PlanText(plan, site);
        List<String> lines = new ArrayList<>();
        if (plan.basis().isGuess()) {
            lines.add(text.guess());
        }
        lines.add(text.floor());
        lines.add(text.holders());
        lines.add(text.costs());
        lines.addAll(text.tank());
        lines.addAll(text.airing());
        lines.addAll(text.preWarm());
        lines.addAll(text.toDo());
        return lines;
    }

    /** The same in one breath, for a message: the floor, its holders and the cost. */
    public static String brief(NightPlan plan, Site site) {
        PlanText text = new PlanText(plan, site);
        String guess = plan.basis().isGuess() ? "A guess: " : "";
        return guess + text.floor() + " " + text.holders() + " " + text.costs();
    }

    /** Who carries the warm duty through the night, in one sentence. */
    public static String holders(NightPlan plan, Site site) {
        return new PlanText(plan, site).holders();
    }

    private String span() {
        return "the night from " + times.day(plan.madeEpochS()) + " to " + times.day(plan.endEpochS())
                + " by the clock of " + site.zone();
    }

    private String guess() {
        String tunnel = plan.basis().tunnelNights() == 0
                ? "the tunnel is taken as the settings describe it, because it has not been learned yet"
                : "";
        String weather = plan.basis().course() instanceof Course.Basis.Guess ? "nobody has forecast the weather" : "";
        String and = tunnel.isEmpty() || weather.isEmpty() ? "" : ", and ";
        return "This plan is a guess: " + weather + and + tunnel + ".";
    }

    private String floor() {
        String from = plan.warns() && plan.coldFromEpochS().isPresent()
                ? ", first in the hour from " + clock(plan.coldFromEpochS().getAsLong())
                : "";
        return String.format(
                Locale.ROOT,
                "The floor of %s %s: the chance that it cannot be held is %s%s. Outside falls to %s, and the coldest bench to %s"
                        + " (%s with every machine off).",
                degrees.text(site.floorC()),
                ChanceWords.willHold(plan.chanceCold()),
                ChanceWords.percent(plan.chanceCold()),
                from,
                temperature(plan.lowestOutsideC()),
                temperature(plan.lowestBenchC()),
                temperature(plan.lowestFreeFloatC()));
    }

    private String temperature(Figure figureC) {
        return degrees.text(figureC.value()) + ", give or take " + degrees.span(figureC.standardError());
    }

    private String holders() {
        List<String> parts = new ArrayList<>();
        WarmHolder before = null;
        for (PlanHour hour : plan.hours()) {
            if (!hour.holder().equals(before)) {
                before = hour.holder();
                parts.add("from " + clock(hour.fromEpochS()) + " " + before.inWords());
            }
        }
        boolean never = plan.hours().stream().allMatch(hour -> hour.holder().isNobody());
        return never ? "No machine need warm." : "The warm duty: " + String.join(", ", parts) + ".";
    }

    private String costs() {
        return String.format(
                Locale.ROOT,
                "Electricity: %.1f kWh, give or take %.1f, for %.2f %s, give or take %.2f.",
                plan.kWh().value(),
                plan.kWh().standardError(),
                plan.cost().value(),
                site.tariff().currency(),
                plan.cost().standardError());
    }

    private List<String> tank() {
        if (plan.tank() instanceof Tank.Lasts && plan.litres().value() < LEAST_TOLD_L) {
            return List.of();
        }
        if (plan.tank() instanceof Tank.Lasts lasts) {
            return List.of(water()
                    + String.format(Locale.ROOT, "; its tank has room for %.1f L and lasts the night.", lasts.leftL()));
        }
        if (plan.tank() instanceof Tank.FullAt full) {
            return List.of(water()
                    + String.format(
                            Locale.ROOT,
                            "; its tank has room for %.1f L and is full at about %s: then it neither dries nor warms.",
                            full.leftL(),
                            clock(full.epochS())));
        }
        return plan.litres().value() >= LEAST_TOLD_L ? List.of(water() + ".") : List.of();
    }

    private String water() {
        return String.format(
                Locale.ROOT,
                "The dryer collects %.1f L of water, give or take %.1f",
                plan.litres().value(),
                plan.litres().standardError());
    }

    private List<String> airing() {
        List<String> windows = new ArrayList<>();
        for (AiringWindow window : plan.airing()) {
            windows.add(times.day(window.fromEpochS()) + " to " + clock(window.toEpochS())
                    + String.format(Locale.ROOT, " (up to %.1f g/kg drier)", 1000 * window.drierKgPerKg()));
        }
        return windows.isEmpty()
                ? List.of()
                : List.of("Opening up dries for nothing: " + String.join("; ", windows) + ".");
    }

    private List<String> preWarm() {
        if (site.tariff() instanceof Tariff.Flat) {
            return List.of();
        }
        if (plan.preWarm() instanceof PreWarm.Worth worth) {
            return List.of(String.format(
                    Locale.ROOT,
                    "Warming by %s more from %s to %s, while electricity is cheap, would be worth %.2f %s, give or take %.2f:"
                            + " advice only, control does not do it by itself.",
                    degrees.span(worth.byK()),
                    clock(worth.fromEpochS()),
                    clock(worth.toEpochS()),
                    worth.saved().value(),
                    site.tariff().currency(),
                    worth.saved().standardError()));
        }
        return List.of("Warming ahead while electricity is cheap is not worth it tonight.");
    }

    private List<String> toDo() {
        List<String> todo = plan.helps().stream()
                .map(help -> help.inWords(degrees, site.zone()))
                .toList();
        return todo.isEmpty()
                ? List.of("Nothing needs doing before dark.")
                : List.of("Before dark: " + String.join("; ", todo) + ".");
    }

    private String clock(long epochS) {
        return times.clock(epochS);
    }
}
