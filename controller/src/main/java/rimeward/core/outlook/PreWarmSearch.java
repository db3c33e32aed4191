package rimeward.core.outlook;

import java.util.Optional;
import java.util.function.ToDoubleFunction;
import rimeward.core.outlook.NightRun.Moment;
import rimeward.core.tunnel.Figure;
import rimeward.core.tunnel.TunnelEstimate;
import rimeward.site.Site;
import rimeward.site.Targets;

/** Tries a few hours before each rise of the price, and a few temperatures. */
final class PreWarmSearch {
    /** Never warmer than this above the floor, K. Own choice. */
    private static final double MOST_ABOVE_FLOOR_K = 4;

    /** It must save this share of the night's cost, and more than its own standard error, to be worth saying. Own choice. */
    private static final double LEAST_SHARE = 0.02;

    private static final int[] LEAD_STEPS = {12, 24, 48, 72};
    private static final double[] SHARES = {0.33, 0.67, 1};
    private static final ToDoubleFunction<NightRun> COST = run -> run.sum(Moment::cost);

    private final Tonight night;
    private final TunnelEstimate estimate;
    private final Nights usual;
    private final double mostK;

    /** One try: so much higher from one step to another. */
    private record Try(int from, int to, double byK, double cost) {}

    PreWarmSearch(Tonight night, TunnelEstimate estimate, Nights usual) {
        this.night = night;
        this.estimate = estimate;
        this.usual = usual;
        Site site = night.site();
        double onAboveFloorK = site.targets().guardMarginK() + site.targets().differentialK();
        double toHotK = site.targets().hotC()
                - Targets.HOT_CLEAR_K
                - site.floorC()
                - night.choices().coldCornerK();
        mostK = StrictMath.min(MOST_ABOVE_FLOOR_K, toHotK) - onAboveFloorK;
    }

    PreWarm best() {
        Optional<Try> best = Optional.empty();
        for (int rise = 1; mostK > 0 && rise < night.steps(); rise++) {
            if (night.pricePerKWh(rise) > night.pricePerKWh(rise - 1)) {
                for (int lead : LEAD_STEPS) {
                    best = cheaper(best, rise, lead);
                }
            }
        }
        return best.map(this::judged).orElse(new PreWarm.NotWorth());
    }

    private Optional<Try> cheaper(Optional<Try> best, int rise, int lead) {
        int from = rise;
        while (from > 0 && rise - from < lead && night.pricePerKWh(from - 1) < night.pricePerKWh(rise)) {
            from--;
        }
        Optional<Try> found = best;
        for (double share : SHARES) {
            double byK = share * mostK;
            double cost = COST.applyAsDouble(NightRun.of(night, World.likeliest(estimate), law(from, rise, byK)));
            if (found.isEmpty() || cost < found.get().cost) {
                found = Optional.of(new Try(from, rise, byK, cost));
            }
        }
        return found;
    }

    private PreWarm judged(Try best) {
        Figure saved = usual.figureLess(Nights.of(night, estimate, law(best.from, best.to, best.byK)), COST);
        double leastSaved = StrictMath.abs(COST.applyAsDouble(usual.likeliest())) * LEAST_SHARE;
        return saved.value() > StrictMath.max(leastSaved, saved.standardError())
                ? new PreWarm.Worth(night.epochS(best.from), night.epochS(best.to), best.byK, saved)
                : new PreWarm.NotWorth();
    }

    private NightLaw.Maker law(int from, int to, double byK) {
        return world ->
                new DutyNight(night.site(), night.choices(), world, step -> step >= from && step < to ? byK : 0);
    }
}
