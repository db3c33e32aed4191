package rimeward.sim.report;

import java.util.ArrayList;
import java.util.List;
import rimeward.report.Say;
import rimeward.sim.run.Comparison;
import rimeward.sim.run.Least;

/** What the least possible is, what it rests on, and where the law's rest went; a sentence each. */
public final class LeastWords {
    private LeastWords() {}

    /** None where it was not asked for. */
    public static List<String> of(Comparison comparison) {
        return comparison.least().map(least -> of(comparison, least)).orElse(List.of());
    }

    private static List<String> of(Comparison comparison, Least least) {
        String law = comparison.results().get(0).law().name();
        String currency = comparison.results().get(0).summary().currency();
        List<String> words = new ArrayList<>();
        words.add("Least possible with perfect foresight, the floor kept at every bench and air no damper than under "
                + law + ": " + Say.with(least.kWh(), 1, "kWh") + "; or, for the least money, "
                + Say.with(least.cost(), 2, currency) + ".");
        words.add("Played into the simulator, dryer and fan by whole quarters of an hour and the dryer with its own"
                + " warming up and running on: " + Say.with(least.playedKWh(), 1, "kWh") + ", "
                + Say.with(least.playedCost(), 2, currency) + "; at worst " + Say.with(least.playedShortK(), 2, "K")
                + " below what was to be kept, and " + Say.number(least.playedDampPercentH(), 0)
                + " percent-hours above the humidity target against " + Say.number(least.dampPercentH(), 0)
                + ". What is truly the least lies between the two.");
        least.held()
                .ifPresent(held -> words.add("Under " + law + " a bench was below the floor in "
                        + Say.number(least.belowH(), 2)
                        + " h (whole quarters of an hour); there the least need only be as warm as"
                        + " that. To hold the floor itself, even foreseeing it all, "
                        + (held.belowH() > 0
                                ? "these machines cannot: " + Say.number(held.belowH(), 2) + " h below it, at worst by "
                                        + Say.with(held.deepestK(), 1, "K") + ", for "
                                : "would have taken ")
                        + Say.with(held.kWh(), 1, "kWh") + "."));
        words.add("Where " + law + "'s electricity goes: " + steps(least) + ".");
        words.add("Laws that let the plants freeze, or the air be damper, can come below it.");
        return words;
    }

    private static String steps(Least least) {
        StringBuilder text = new StringBuilder();
        double beforeKWh = 0;
        for (Least.Step step : least.steps()) {
            boolean first = text.isEmpty();
            text.append(first ? "" : ", ").append(step.says()).append(' ').append(Say.number(step.kWh(), 1));
            double moreKWh = step.kWh() - beforeKWh;
            text.append(first ? " kWh" : " (" + (moreKWh > 0 ? "+" : "") + Say.number(moreKWh, 1) + ")");
            beforeKWh = step.kWh();
        }
        return text.toString();
    }
}
