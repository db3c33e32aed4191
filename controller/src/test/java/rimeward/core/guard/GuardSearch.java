package rimeward.core.guard;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import rimeward.core.decision.Cause;
import rimeward.core.decision.Decision;
import rimeward.core.decision.LawState;
import rimeward.core.decision.Reason;
import rimeward.core.judgement.Damp;
import rimeward.core.judgement.Inside;
import rimeward.core.judgement.Judgement;
import rimeward.core.judgement.Outside;
import rimeward.core.judgement.Trust;
import rimeward.core.tunnel.TunnelModel;
import rimeward.core.watch.Deliveries;
import rimeward.core.watch.Delivery;
import rimeward.site.Machine;
import rimeward.site.RelaySet;
import rimeward.site.Site;

/**
 * Walks every state the guard can reach, breadth first to closure, under every input of a discretised world, and asks the
 * properties of each step. Time goes in whole minutes. Clocks are cut off where no rule of this site looks any farther,
 * which makes the states finite without changing what the guard does.
 */
final class GuardSearch {
    static final double DT_S = 60;

    /** Down for two steps, s: one in which the machine opens, and one after. */
    private static final double STAND_DOWN_S = 3 * DT_S;

    /** One input: what the law wishes and what is believed. */
    record Input(
            RelaySet wish, Inside inside, Delivery heaterSeen, Delivery dryerSeen, boolean tankFull, boolean inVain) {}

    /** The guard under search: the real one, or a mutant of it. */
    interface Step {
        Guarded step(GuardState was, Decision decision, Judgement judgement, Deliveries deliveries);
    }

    private final Site site;
    private final List<Input> inputs;
    private final Step guard;
    private final Properties properties;
    private final boolean servicing;

    GuardSearch(Site site, List<Inside> insides, Step guard) {
        this(site, insides, guard, false);
    }

    /** @param servicing whether any one machine may stand down for some minutes at any time; two at once would be too many states */
    GuardSearch(Site site, List<Inside> insides, Step guard, boolean servicing) {
        this.site = site;
        this.servicing = servicing;
        this.guard = guard;
        properties = new Properties(site);
        inputs = inputs(site, insides).stream()
                .filter(input -> !servicing || isPlain(input.wish()))
                .toList();
    }

    static Step real(Site site) {
        Guard guard = new Guard(site);
        TunnelModel tunnel = TunnelModel.assumed(site);
        return (was, decision, judgement, deliveries) ->
                guard.step(was, decision, judgement, deliveries, tunnel, -8, DT_S);
    }

    /** Number of states in the closure; throws at the first broken property. */
    int close() {
        Set<GuardState> seen = new HashSet<>();
        ArrayDeque<GuardState> open = new ArrayDeque<>();
        add(GuardState.start(site), seen, open);
        while (!open.isEmpty()) {
            GuardState was = open.poll();
            for (Input input : inputs) {
                Guarded guarded = step(was, input);
                properties.check(was, input, guarded);
                add(guarded.next(), seen, open);
            }
        }
        return seen.size();
    }

    int inputCount() {
        return inputs.size();
    }

    private void add(GuardState state, Set<GuardState> seen, ArrayDeque<GuardState> open) {
        GuardState cut = cut(state);
        if (seen.add(cut)) {
            open.add(cut);
            if (servicing && cut.standDowns().machines().isEmpty()) {
                for (int i = 0; i < site.machines().size(); i++) {
                    add(
                            cut.with(StandDowns.NONE.with(
                                    i, STAND_DOWN_S, cut.clocks().size())),
                            seen,
                            open);
                }
            }
        }
    }

    private Guarded step(GuardState was, Input input) {
        Reason asked = Reason.of(Cause.ASKED);
        Decision decision =
                new Decision(input.wish(), Collections.nCopies(site.machines().size(), asked), LawState.NOTHING);
        Judgement judgement = new Judgement(
                input.inside() instanceof Inside.Seen ? Trust.FULL : Trust.BLIND,
                input.inside(),
                Damp.UNSEEN,
                Outside.UNSEEN,
                input.tankFull(),
                false,
                List.of(),
                List.of());
        List<Delivery> each = new ArrayList<>();
        for (int i = 0; i < site.machines().size(); i++) {
            boolean closed = was.closed().has(i);
            Delivery seen = site.dryerRelay().has(i)
                    ? input.dryerSeen()
                    : site.heaterStages().has(i) ? input.heaterSeen() : Delivery.UNSEEN;
            each.add(closed ? seen : Delivery.OFF);
        }
        RelaySet failed =
                input.heaterSeen() == Delivery.NOT_GIVING ? was.closed().and(site.heaterStages()) : RelaySet.none();
        return guard.step(was, decision, judgement, new Deliveries(each, failed, failed, input.inVain()));
    }

    private GuardState cut(GuardState state) {
        List<MachineClock> clocks = new ArrayList<>();
        for (int i = 0; i < state.clocks().size(); i++) {
            Machine machine = site.machines().get(i);
            MachineClock clock = state.clocks().get(i);
            double switchLimitS = Math.max(120, Math.max(machine.minOnS(), machine.minRestS()));
            clocks.add(new MachineClock(
                    Math.min(switchLimitS, clock.sinceSwitchS()),
                    Math.min(machine.startSpacingS(), clock.sinceStartS())));
        }
        return new GuardState(
                state.closed(),
                clocks,
                state.needed(),
                state.hot(),
                state.dryerTooCold(),
                state.dryerRestLeftS(),
                Math.min(site.circuit().staggerS(), state.sinceAnyStartS()),
                state.blindPhaseS(),
                state.standDowns());
    }

    /** The other wishes meet enough states without anybody standing down. */
    private boolean isPlain(RelaySet wish) {
        return wish.isEmpty()
                || wish.equals(site.dryerRelay())
                || wish.size() == site.machines().size();
    }

    private static List<Input> inputs(Site site, List<Inside> insides) {
        List<Input> all = new ArrayList<>();
        boolean hasDryer = !site.dryerRelay().isEmpty();
        for (int wish = 0; wish < 1 << site.machines().size(); wish++) {
            for (Inside inside : insides) {
                for (Delivery heater : List.of(Delivery.UNSEEN, Delivery.NOT_GIVING)) {
                    for (Delivery dryer : hasDryer
                            ? List.of(Delivery.GIVING, Delivery.UNSEEN, Delivery.NOT_GIVING)
                            : List.of(Delivery.UNSEEN)) {
                        all.add(new Input(RelaySet.of(wish), inside, heater, dryer, false, false));
                        if (hasDryer) {
                            all.add(new Input(RelaySet.of(wish), inside, heater, dryer, true, false));
                        }
                    }
                }
                if (hasDryer) {
                    all.add(new Input(RelaySet.of(wish), inside, Delivery.UNSEEN, Delivery.UNSEEN, false, true));
                }
            }
        }
        return all;
    }
}
