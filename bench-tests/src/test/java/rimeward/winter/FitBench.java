package rimeward.winter;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import rimeward.core.decision.DutyLaw;
import rimeward.core.tunnel.Figure;
import rimeward.core.tunnel.Lesson;
import rimeward.core.tunnel.Stretch;
import rimeward.core.tunnel.TunnelFit;
import rimeward.record.FrameRow;
import rimeward.record.Stretches;
import rimeward.sim.run.LawChoice;
import rimeward.sim.run.LawLabel;
import rimeward.sim.run.Replay;
import rimeward.sim.scenario.Scenario;
import rimeward.site.RelaySet;

/**
 * What thirteen days of frost teach of tunnels that nobody has seen, with sensors that lie within what is stated of them. Prints a table and
 * asserts nothing. Arguments: first seed, how many.
 */
final class FitBench {
    private static final int DAYS = 15;
    private static final int MINUTE_MS = 60_000;
    private static final int QUARTERS_A_DAY = 96;
    private static final int FROM_NOON_TO_DUSK = 24;
    private static final int QUARTERS_A_NIGHT = 48;

    private FitBench() {}

    public static void main(String[] args) {
        long first = Long.parseLong(args[0]);
        int count = Integer.parseInt(args[1]);
        System.out.println(
                "seed  truth W/K  settings  learned  +-95 %  off %  covers  whiteness  next night's lowest off K");
        List<Found> all = new ArrayList<>();
        for (long seed = first; seed < first + count; seed++) {
            Scenario scenario = new RandomWinter(seed, DAYS).frosty();
            Found found = look(scenario);
            all.add(found);
            System.out.println(seed + "  " + found.text(scenario.site().tunnel().heatLossWPerK()));
        }
        System.out.printf(
                Locale.ROOT,
                "of %d: off by at most 5 %%: %d, 10 %%: %d; the interval covers: %d; mean off %.1f %%; RMSE of the next lowest %.2f K%n",
                count,
                all.stream().filter(f -> Math.abs(f.offPercent()) <= 5).count(),
                all.stream().filter(f -> Math.abs(f.offPercent()) <= 10).count(),
                all.stream().filter(Found::covers).count(),
                all.stream().mapToDouble(Found::offPercent).average().orElseThrow(),
                Math.sqrt(all.stream()
                        .mapToDouble(f -> f.missedK * f.missedK)
                        .average()
                        .orElseThrow()));
    }

    private record Found(double truthWPerK, Figure learnedWPerK, double whiteness, double missedK) {
        double offPercent() {
            return 100 * (learnedWPerK.value() / truthWPerK - 1);
        }

        boolean covers() {
            return learnedWPerK.least() <= truthWPerK && truthWPerK <= learnedWPerK.most();
        }

        String text(double settingsWPerK) {
            return String.format(
                    Locale.ROOT,
                    "%9.1f %9.1f %8.1f %7.1f %6.1f  %6s %10.3f %10.2f",
                    truthWPerK,
                    settingsWPerK,
                    learnedWPerK.value(),
                    learnedWPerK.most() - learnedWPerK.value(),
                    offPercent(),
                    covers() ? "yes" : "no",
                    whiteness,
                    missedK);
        }
    }

    private static Found look(Scenario scenario) {
        NightMeans means = new NightMeans();
        List<Stretch> all = stretches(scenario, means);
        Stretch last = all.get(all.size() - 1);
        int dusk = last.quarters().size() - QUARTERS_A_DAY + FROM_NOON_TO_DUSK;
        List<Stretch> seen = new ArrayList<>(all.subList(0, all.size() - 1));
        seen.add(part(last, last.quarters().size() - QUARTERS_A_DAY));
        if (!(TunnelFit.of(scenario.site(), seen) instanceof Lesson.Learned learned)) {
            throw new IllegalStateException("learned nothing of " + scenario.id());
        }
        double lowestC = last.quarters().subList(dusk, dusk + QUARTERS_A_NIGHT).stream()
                .mapToDouble(Stretch.Quarter::airC)
                .min()
                .orElseThrow();
        double missedK = learned.box().lowestAirC(part(last, dusk + QUARTERS_A_NIGHT), dusk) - lowestC;
        return new Found(
                SteadyLoss.wPerK(scenario, means.benchesC()),
                learned.estimate().heatLossWPerK(),
                learned.whiteness(),
                missedK);
    }

    private static Stretch part(Stretch whole, int quarters) {
        return new Stretch(whole.startEpochS(), whole.quarters().subList(0, quarters));
    }

    /** As the record would have it: each change, and a frame a minute. */
    static List<Stretch> stretches(Scenario scenario, NightMeans means) {
        Stretches found = new Stretches(scenario.site());
        RelaySet[] closed = {RelaySet.none()};
        Replay.run(scenario, new LawChoice(new LawLabel("duty", "ours", true), new DutyLaw()), (outcome, truth) -> {
            means.look(outcome, truth);
            boolean change = !closed[0].equals(outcome.guarded().closed());
            closed[0] = outcome.guarded().closed();
            if (change || outcome.frame().tick().elapsedMs() % MINUTE_MS < scenario.tickS() * 1000L) {
                found.add(FrameRow.of(outcome, change));
            }
        });
        return found.found();
    }
}
