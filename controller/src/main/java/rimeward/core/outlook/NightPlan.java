package rimeward.core.outlook;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import rimeward.core.outlook.NightRun.Moment;
import rimeward.core.tunnel.Figure;
import rimeward.core.tunnel.TunnelEstimate;
import rimeward.site.Drying;
import rimeward.site.Site;

/**
 * What the coming night will bring, who carries it and what it costs, by the learned tunnel and the expected weather. It only tells:
 * control goes by what the sensors show. A spread is one standard deviation. The sun is left out.
 *
 * @param madeEpochS when it was made, s since 1970 UTC
 * @param endEpochS how far it looks
 * @param lowestOutsideC lowest outside temperature, °C
 * @param lowestFreeFloatC lowest of the coldest bench with every machine off, °C
 * @param lowestBenchC lowest of the coldest bench as planned, °C
 * @param kWh electricity of all machines, kWh
 * @param kWhEach of each, in the site's order
 * @param cost in the tariff's currency
 * @param litres water that the dryer collects, L
 * @param chanceCold chance that the floor cannot be held, 0 to 1: that of the worst moment, because one night's errors go together
 * @param coldFromEpochS the hour in which that chance first exceeds {@code statedChance}; absent where it never does
 * @param statedChance from which the grower is told to act
 */
public record NightPlan(
        long madeEpochS,
        long endEpochS,
        List<PlanHour> hours,
        Figure lowestOutsideC,
        Figure lowestFreeFloatC,
        Figure lowestBenchC,
        Figure kWh,
        List<Double> kWhEach,
        Figure cost,
        Figure litres,
        double chanceCold,
        OptionalLong coldFromEpochS,
        double statedChance,
        Tank tank,
        List<Help> helps,
        List<AiringWindow> airing,
        PreWarm preWarm,
        PlanBasis basis) {
    public NightPlan {
        hours = List.copyOf(hours);
        kWhEach = List.copyOf(kWhEach);
        helps = List.copyOf(helps);
        airing = List.copyOf(airing);
    }

    /** @throws IllegalArgumentException if the course does not reach beyond now */
    public static NightPlan of(
            Site site, TunnelEstimate estimate, Course course, PlanStart start, PlanChoices choices) {
        Tonight night = Tonight.of(site, course, start, choices);
        Nights nights = Nights.of(night, estimate, ours(night));
        List<PlanHour> hours = new PlanHours(night, nights).all();
        double chanceCold =
                hours.stream().mapToDouble(PlanHour::chanceCold).max().orElse(0);
        Tank tank = tank(night, nights.likeliest());
        return new NightPlan(
                start.nowEpochS(),
                night.epochS(night.steps()),
                hours,
                nights.figure(run -> run.least(Moment::outsideC)),
                nights.figure(run -> run.least(Moment::freeC)),
                nights.figure(run -> run.least(Moment::benchC)),
                nights.figure(run -> run.sum(Moment::kWh)),
                each(site, hours),
                nights.figure(run -> run.sum(Moment::cost)),
                nights.figure(run -> run.sum(Moment::litres)),
                chanceCold,
                firstAbove(hours, choices.statedChance()),
                choices.statedChance(),
                tank,
                Helps.of(night, estimate, nights, chanceCold, tank),
                AiringWindow.of(night, nights.likeliest()),
                PreWarm.of(night, estimate, nights),
                new PlanBasis(course.basis(), estimate.nights(), assumed(site, start)));
    }

    static NightLaw.Maker ours(Tonight night) {
        return world -> new DutyNight(night.site(), night.choices(), world, DutyNight.Raise.NONE);
    }

    /** Whether the floor may fail more likely than is stated to be borne. */
    public boolean warns() {
        return chanceCold > statedChance;
    }

    /** The same, resting on this too, which nobody knew. */
    public NightPlan assuming(List<String> more) {
        List<String> all = new ArrayList<>(more);
        all.addAll(basis.assumed());
        return new NightPlan(
                madeEpochS,
                endEpochS,
                hours,
                lowestOutsideC,
                lowestFreeFloatC,
                lowestBenchC,
                kWh,
                kWhEach,
                cost,
                litres,
                chanceCold,
                coldFromEpochS,
                statedChance,
                tank,
                helps,
                airing,
                preWarm,
                new PlanBasis(basis.course(), basis.tunnelNights(), all));
    }

    private static OptionalLong firstAbove(List<PlanHour> hours, double statedChance) {
        return hours.stream()
                .filter(hour -> hour.chanceCold() > statedChance)
                .mapToLong(PlanHour::fromEpochS)
                .findFirst();
    }

    private static List<Double> each(Site site, List<PlanHour> hours) {
        List<Double> sums = new ArrayList<>();
        for (int i = 0; i < site.machines().size(); i++) {
            int machine = i;
            sums.add(hours.stream()
                    .mapToDouble(hour -> hour.kWhEach().get(machine))
                    .sum());
        }
        return sums;
    }

    private static Tank tank(Tonight night, NightRun run) {
        if (!(run.machinery().drying() instanceof Drying.Dryer dryer)) {
            return new Tank.None();
        }
        double leftL = night.start().tankLeftL().orElse(dryer.tankL());
        if (Double.isInfinite(leftL)) {
            return new Tank.None();
        }
        for (int step = 0; step < run.moments().size(); step++) {
            if (run.moments().get(step).tankFull()) {
                return new Tank.FullAt(leftL, night.epochS(step));
            }
        }
        return new Tank.Lasts(leftL);
    }

    private static List<String> assumed(Site site, PlanStart start) {
        List<String> assumed = new ArrayList<>();
        if (start.massC().isEmpty()) {
            assumed.add("pots and soil are as warm as the air");
        }
        if (start.rhPercent().isEmpty()) {
            assumed.add("the damp inside is what the model balances");
        }
        boolean hasTank = site.drying() instanceof Drying.Dryer dryer && !Double.isInfinite(dryer.tankL());
        if (hasTank && start.tankLeftL().isEmpty()) {
            assumed.add("the dryer's tank is empty");
        }
        return assumed;
    }
}
