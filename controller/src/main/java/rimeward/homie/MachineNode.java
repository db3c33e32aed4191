package rimeward.homie;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import rimeward.core.Outcome;
import rimeward.core.decision.Reason;
import rimeward.core.order.Order;
import rimeward.core.reading.Reading;
import rimeward.core.watch.Delivery;
import rimeward.site.Degrees;
import rimeward.site.Machine;

/** A machine: its relay and why it is as it is, what it is seen to do, and how long it still stands down. */
final class MachineNode {
    /** Longest that a machine may stand down, min. */
    static final int LONGEST_MIN = (int) (Order.StandDown.LONGEST_S / 60);

    private MachineNode() {}

    /** @param at the machine's place in the site's list */
    static Node of(Machine machine, int at, Degrees degrees, boolean settable) {
        List<Node.Leaf> leaves = new ArrayList<>();
        leaves.add(new Node.Leaf(
                Property.yesNo("on", "Whether its relay is closed", "off,on"),
                look -> Shown.yesNo(look.outcome().guarded().closed().has(at))));
        leaves.add(new Node.Leaf(Property.text("why", "Why"), look -> why(look.outcome(), at, degrees)));
        leaves.add(new Node.Leaf(
                Property.oneOf("delivery", "What it is seen to do", Delivery.values()),
                look -> Shown.word(look.outcome().deliveries().of(at))));
        if (machine.hasPowerFeedback()) {
            double stepW = StrictMath.max(5, machine.ratedW() / 50); // what a plain meter wavers by. Own choice
            leaves.add(new Node.Leaf(
                    Property.number("power", "What it draws", "W"),
                    look -> look.outcome().frame().senses().powersW().get(at) instanceof Reading.Value value
                            ? Shown.number(value.value(), stepW, 0)
                            : Shown.NOTHING));
        }
        leaves.add(new Node.Leaf(
                Property.of("stand-down", "Stands down for service, this long yet", Datatype.INTEGER)
                        .as("0:" + LONGEST_MIN)
                        .in("min")
                        .settable(settable),
                look -> Shown.whole(leftMin(look.outcome(), at))));
        String type = machine.role().name().toLowerCase(Locale.ROOT).replace('_', '-');
        return new Node(Tree.nodeOf(machine), machine.id(), type, leaves);
    }

    /** How long it stands down yet, in whole minutes, rounded up. */
    private static long leftMin(Outcome outcome, int at) {
        return (long) StrictMath.ceil(outcome.guarded().next().standDowns().leftS(at) / 60);
    }

    private static Shown why(Outcome outcome, int at, Degrees degrees) {
        Reason reason = outcome.guarded().reasons().get(at);
        boolean on = outcome.guarded().closed().has(at);
        return new Shown.Text(reason.cause().name() + on, reason.sentence(degrees));
    }
}
