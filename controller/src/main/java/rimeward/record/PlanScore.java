package rimeward.record;

import java.util.Locale;
import java.util.OptionalDouble;
import rimeward.core.outlook.PlanPromise;

/**
 * A plan held against the night that came. Errors are what was less what was planned; absent where nothing was seen. The night is the
 * record's, from noon to noon, less what had been taken before the plan was made.
 *
 * @param outsideK error of the lowest outside temperature, K
 * @param benchK error of the lowest bench, K
 * @param kWh error of the electricity, kWh
 * @param cost error of the cost, in the tariff's currency
 * @param litres error of the water, L; what was collected is itself an estimate
 * @param brier (chance − what came)², 0 to 1, where what came is 1 if the bench went below the floor (Brier 1950)
 */
public record PlanScore(
        OptionalDouble outsideK,
        OptionalDouble benchK,
        double kWh,
        double cost,
        double litres,
        OptionalDouble brier,
        boolean guess) {

    public static PlanScore of(PlanPromise plan, Night was) {
        double kWh = was.kWh();
        return new PlanScore(
                error(was.outside(), plan.lowestOutsideC().value()),
                error(was.bench(), plan.lowestBenchC().value()),
                kWh - plan.nightKWh(),
                was.cost() - plan.beforeCost() - plan.cost().value(),
                was.litresEstimated() - plan.beforeLitres() - plan.litres().value(),
                brier(plan, was.bench()),
                plan.guess());
    }

    private static OptionalDouble error(Lowest was, double planned) {
        return was instanceof Lowest.Seen seen ? OptionalDouble.of(seen.airC() - planned) : OptionalDouble.empty();
    }

    private static OptionalDouble brier(PlanPromise plan, Lowest bench) {
        if (!(bench instanceof Lowest.Seen seen)) {
            return OptionalDouble.empty();
        }
        double came = seen.airC() < plan.floorC() ? 1 : 0;
        return OptionalDouble.of((plan.chanceCold() - came) * (plan.chanceCold() - came));
    }

    /** "outside −1.2 K, bench +0.3 K, −0.4 kWh, …": what was, less what was planned. */
    public String inWords(String currency) {
        return String.format(
                Locale.ROOT,
                "outside %s, bench %s, %+.1f kWh, %+.2f%s, %+.1f L, Brier %s%s",
                kelvin(outsideK),
                kelvin(benchK),
                kWh,
                cost,
                currency.isEmpty() ? "" : " " + currency,
                litres,
                brier.isPresent() ? String.format(Locale.ROOT, "%.3f", brier.getAsDouble()) : "unseen",
                guess ? " (was a guess)" : "");
    }

    private static String kelvin(OptionalDouble errorK) {
        return errorK.isPresent() ? String.format(Locale.ROOT, "%+.1f K", errorK.getAsDouble()) : "unseen";
    }
}
