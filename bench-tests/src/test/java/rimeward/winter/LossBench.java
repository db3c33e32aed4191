package rimeward.winter;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import rimeward.core.tunnel.Lesson;
import rimeward.core.tunnel.LossChange;
import rimeward.core.tunnel.LossStanding;
import rimeward.core.tunnel.LossWatch;
import rimeward.core.tunnel.Stretch;
import rimeward.core.tunnel.TunnelFit;
import rimeward.sim.scenario.Scenario;

/**
 * What the watch over heat loss is worth: false alarms in whole winters of tunnels that do not change, and how soon a change is told that
 * comes on any night. The tunnel is learned once, from the first fortnight. Prints tables and asserts nothing. Arguments: first seed, how
 * many, how many days a winter has, and each change that is to be tried, %; without one there are only false alarms, five times as quickly.
 */
final class LossBench {
    private static final int LEARNED_AFTER_DAYS = 14;
    private static final int FIRST_CHANGE_DAY = LEARNED_AFTER_DAYS + 5;
    private static final int BETWEEN_DAYS = 7;
    private static final int LOOKED_FOR_DAYS = 20;
    private static final long DAY_S = 86_400;
    private static final double WINTER_NIGHTS = 180;

    private final Map<Double, Score> scores = new TreeMap<>();
    private final List<Double> shares = new ArrayList<>();
    private int nights;
    private int falseAlarms;
    private int tunnels;

    public static void main(String[] args) {
        LossBench bench = new LossBench();
        long first = Long.parseLong(args[0]);
        for (int i = 3; i < args.length; i++) {
            bench.shares.add(Double.parseDouble(args[i]) / 100);
        }
        for (long seed = first; seed < first + Long.parseLong(args[1]); seed++) {
            bench.look(seed, Integer.parseInt(args[2]));
            bench.print();
        }
    }

    private void look(long seed, int days) {
        Scenario made = new RandomWinter(seed, days).frosty();
        Scenario scenario = ChangedLoss.quick(made, made.tunnel());
        NightMeans means = new NightMeans();
        List<Stretch> same = FitBench.stretches(scenario, means);
        Lesson lesson = TunnelFit.of(scenario.site(), until(same, scenario.startEpochS(), LEARNED_AFTER_DAYS));
        LossWatch watch = LossWatch.NEW.after(lesson, until(same, scenario.startEpochS(), LEARNED_AFTER_DAYS));
        if (watch.standing() instanceof LossStanding.Unknown) {
            System.out.println(seed + "  learned nothing");
            return;
        }
        tunnels++;
        List<LossWatch> daily = new ArrayList<>();
        boolean told = false;
        for (int day = LEARNED_AFTER_DAYS; day < days; day++) {
            daily.add(watch);
            watch = watch.after(lesson, until(same, scenario.startEpochS(), day + 1));
            boolean stands = watch.standing() instanceof LossStanding.Changed;
            nights++;
            if (stands && !told) {
                falseAlarms++;
                System.out.println(seed + "  false alarm on day " + day + ": " + watch.standing());
            }
            told = stands;
        }
        for (double share : shares) {
            Scenario changed = new ChangedLoss(scenario, means.benchesC(), share > 0 && seed % 2 == 0).by(share);
            List<Stretch> other = FitBench.stretches(changed, new NightMeans());
            for (int day = FIRST_CHANGE_DAY; day + LOOKED_FOR_DAYS <= days; day += BETWEEN_DAYS) {
                LossWatch before = daily.get(day - LEARNED_AFTER_DAYS);
                if (before.standing() instanceof LossStanding.Usual) {
                    scores.computeIfAbsent(share, each -> new Score())
                            .look(before, lesson, other, scenario.startEpochS(), day, share);
                }
            }
        }
    }

    /** What is known of the first days. */
    private static List<Stretch> until(List<Stretch> all, long startEpochS, int days) {
        List<Stretch> some = new ArrayList<>();
        for (Stretch stretch : all) {
            long quarters = (startEpochS + days * DAY_S - stretch.startEpochS()) / Stretch.QUARTER_S;
            if (quarters > 0) {
                int last = (int) Math.min(stretch.quarters().size(), quarters);
                some.add(new Stretch(stretch.startEpochS(), stretch.quarters().subList(0, last)));
            }
        }
        return some;
    }

    private void print() {
        System.out.printf(
                Locale.ROOT,
                "%d tunnels, %d nights without a change: %d false alarms, %.2f in 100 nights, %.2f in a winter of 180%n",
                tunnels,
                nights,
                falseAlarms,
                100.0 * falseAlarms / nights,
                WINTER_NIGHTS * falseAlarms / nights);
        System.out.println("change %  tries  told %  median nights to it  told size % (median)  interval covers %");
        scores.forEach((share, score) -> System.out.println(score.text(share)));
    }

    /** Of one size of change. */
    private static final class Score {
        private final List<Double> delays = new ArrayList<>();
        private final List<Double> sizes = new ArrayList<>();
        private int tries;
        private int covered;

        void look(LossWatch before, Lesson lesson, List<Stretch> changed, long startEpochS, int from, double share) {
            tries++;
            LossWatch watch = before;
            for (int day = from; day < from + LOOKED_FOR_DAYS; day++) {
                watch = watch.after(lesson, until(changed, startEpochS, day + 1));
                if (watch.standing() instanceof LossStanding.Changed found) {
                    if (found.change().isMore() == share > 0) {
                        told(found.change(), day + 1 - from, share);
                    }
                    return;
                }
            }
        }

        private void told(LossChange change, int afterNights, double share) {
            delays.add((double) afterNights);
            sizes.add(change.percent());
            if (change.leastPercent() <= 100 * share && 100 * share <= change.mostPercent()) {
                covered++;
            }
        }

        String text(double share) {
            return String.format(
                    Locale.ROOT,
                    "%8.0f %6d %7.0f %20.0f %21.0f %18.0f",
                    100 * share,
                    tries,
                    100.0 * delays.size() / tries,
                    median(delays),
                    median(sizes),
                    100.0 * covered / Math.max(1, delays.size()));
        }

        private static double median(List<Double> all) {
            return all.isEmpty() ? Double.NaN : all.stream().sorted().toList().get(all.size() / 2);
        }
    }
}
