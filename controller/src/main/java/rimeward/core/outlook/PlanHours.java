package rimeward.core.outlook;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import rimeward.core.outlook.NightRun.Moment;
import rimeward.core.tunnel.Figure;
import rimeward.site.Machine;
import rimeward.site.Site;

/** Simulated nights told by the hour. */
final class PlanHours {
    /** A share smaller than this is not worth naming. Own choice. */
    private static final double LEAST_SHARE = 0.02;

    private static final double J_PER_KWH = 3.6e6;

    private final Tonight night;
    private final Site site;
    private final Nights nights;

    PlanHours(Tonight night, Nights nights) {
        this.night = night;
        this.nights = nights;
        site = night.site();
    }

    List<PlanHour> all() {
        List<PlanHour> hours = new ArrayList<>();
        for (Tonight.Hour hour : night.hours()) {
            hours.add(one(hour.from(), hour.to()));
        }
        return hours;
    }

    private PlanHour one(int from, int to) {
        double[] shares = shares(from, to);
        double lengthS = (to - from) * (double) Tonight.STEP_S;
        List<Double> kWhEach = new ArrayList<>();
        for (int i = 0; i < shares.length; i++) {
            kWhEach.add(shares[i] * site.machines().get(i).ratedW() * lengthS / J_PER_KWH);
        }
        int worst = worst(from, to);
        Figure freeFloatC = nights.figure(run -> run.least(from, to, Moment::freeC));
        return new PlanHour(
                night.epochS(from),
                lengthS,
                nights.figure(run -> run.mean(from, to, Moment::outsideC)),
                freeFloatC,
                nights.figure(run -> run.least(from, to, Moment::benchC)),
                nights.figure(run -> run.mean(from, to, Moment::rhPercent)),
                holder(shares, freeFloatC.value()),
                Arrays.stream(shares).boxed().toList(),
                kWhEach,
                nights.figure(run -> run.sum(from, to, Moment::kWh)),
                nights.figure(run -> run.sum(from, to, Moment::cost)),
                nights.figure(run -> run.sum(from, to, Moment::litres)),
                nights.spareW(worst),
                chance(from, worst));
    }

    /** A bench that is below the floor when the plan is made is cold for certain. */
    private double chance(int from, int worst) {
        double nowC = night.start().airC() - night.choices().coldCornerK();
        return from == 0 && nowC < site.floorC() ? 1 : nights.chanceCold(worst);
    }

    private int worst(int from, int to) {
        int worst = from;
        for (int step = from; step < to; step++) {
            worst = nights.chanceCold(step) > nights.chanceCold(worst) ? step : worst;
        }
        return worst;
    }

    private double[] shares(int from, int to) {
        double[] shares = new double[site.machines().size()];
        NightRun run = nights.likeliest();
        Machinery machinery = run.machinery();
        for (int i = 0; i < machinery.stages().size(); i++) {
            int stage = i;
            shares[machinery.stages().get(i)] = run.mean(from, to, moment -> machinery.share(stage, moment.heaterW()));
        }
        for (int i = 0; i < shares.length; i++) {
            if (site.dryerRelay().has(i)) {
                shares[i] = run.mean(from, to, Moment::dryerShare);
            }
        }
        return shares;
    }

    /** The dryer holds the duty where it runs and the bench would not keep the band without it. */
    private WarmHolder holder(double[] shares, double freeFloatC) {
        List<Integer> stages = new ArrayList<>();
        boolean dryer = false;
        for (int i = 0; i < shares.length; i++) {
            Machine machine = site.machines().get(i);
            boolean runs = shares[i] >= LEAST_SHARE;
            switch (machine.role()) {
                case HEATER_STAGE -> stages.addAll(runs ? List.of(i + 1) : List.of());
                case DRYER ->
                    dryer = runs && freeFloatC < site.floorC() + site.targets().guardMarginK();
                case VENT_FAN -> {}
            }
        }
        return new WarmHolder(stages, dryer);
    }
}
