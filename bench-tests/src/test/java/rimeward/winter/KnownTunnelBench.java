package rimeward.winter;

import java.util.List;
import java.util.Locale;
import rimeward.core.decision.DutyLaw;
import rimeward.core.order.KnownTunnel;
import rimeward.core.order.Order;
import rimeward.core.tunnel.Lesson;
import rimeward.core.tunnel.TunnelEstimate;
import rimeward.core.tunnel.TunnelFit;
import rimeward.port.Orders;
import rimeward.record.FrameRow;
import rimeward.record.Stretches;
import rimeward.service.Restart;
import rimeward.sim.run.LawChoice;
import rimeward.sim.run.LawLabel;
import rimeward.sim.run.Replay;
import rimeward.sim.run.RunResult;
import rimeward.sim.run.Summary;
import rimeward.sim.scenario.Scenario;
import rimeward.site.RelaySet;

/**
 * Whether control does any worse when it goes by the tunnel that its nights taught than by the settings': the same frosty fortnight of random
 * tunnels, once with each. Prints a table and asserts nothing. Arguments: first seed, how many, days.
 */
final class KnownTunnelBench {
    private static final int MINUTE_MS = 60_000;
    private static final LawChoice OURS = new LawChoice(new LawLabel("duty", "ours", true), new DutyLaw());

    private KnownTunnelBench() {}

    public static void main(String[] args) {
        long first = Long.parseLong(args[0]);
        int count = Integer.parseInt(args[1]);
        int days = Integer.parseInt(args[2]);
        System.out.println(
                "seed  settings, learned W/K; lowest bench C, below floor s, kWh, starts by the settings | as learned");
        for (long seed = first; seed < first + count; seed++) {
            System.out.println(seed + "  " + look(new RandomWinter(seed, days).frosty()));
        }
    }

    private static String look(Scenario scenario) {
        Stretches found = new Stretches(scenario.site());
        RelaySet[] closed = {RelaySet.none()};
        RunResult before = Replay.run(scenario, OURS, (outcome, truth) -> {
            boolean change = !closed[0].equals(outcome.guarded().closed());
            closed[0] = outcome.guarded().closed();
            if (change || outcome.frame().tick().elapsedMs() % MINUTE_MS < scenario.tickS() * 1000L) {
                found.add(FrameRow.of(outcome, change));
            }
        });
        if (!(TunnelFit.of(scenario.site(), found.found()) instanceof Lesson.Learned learned)) {
            return "nothing was learned";
        }
        RunResult after = Replay.run(scenario, OURS, once(known(scenario, learned.estimate())));
        return String.format(
                Locale.ROOT,
                "%.0f %.0f;  %s  |  %s",
                scenario.site().tunnel().heatLossWPerK(),
                learned.estimate().heatLossWPerK().value(),
                text(before.summary()),
                text(after.summary()));
    }

    private static Order known(Scenario scenario, TunnelEstimate tunnel) {
        return new Order.KnowTunnel(new KnownTunnel.Learned(
                tunnel.heatLossWPerK().value(),
                tunnel.airCapacityJPerK().value(),
                tunnel.massCapacityJPerK().value(),
                tunnel.massCouplingWPerK().value(),
                tunnel.nights(),
                Restart.tunnelMark(scenario.site())));
    }

    private static Orders once(Order order) {
        boolean[] given = {false};
        return () -> {
            boolean first = !given[0];
            given[0] = true;
            return first ? List.of(order) : List.of();
        };
    }

    private static String text(Summary summary) {
        int starts = summary.machines().stream()
                .mapToInt(machine -> machine.starts())
                .sum();
        return String.format(
                Locale.ROOT,
                "%.2f %d %.1f %d",
                summary.lowestBenchC(),
                summary.belowFloorS(),
                summary.totalKWh(),
                starts);
    }
}
