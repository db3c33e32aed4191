package rimeward.homie;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import rimeward.site.Messaging.Command;

/** What was asked for from afar, and what became of it. Where nothing may be asked there is no such node. */
final class OrdersNode {
    private OrdersNode() {}

    static Node of(Set<Command> allowed) {
        List<Node.Leaf> leaves = new ArrayList<>();
        if (allowed.contains(Command.ACKNOWLEDGE)) {
            leaves.add(new Node.Leaf(
                    Property.text("acknowledge", "The alert acknowledged last").settable(true),
                    look -> Shown.text(look.told().acknowledged)));
        }
        leaves.add(new Node.Leaf(
                Property.text("answer", "What became of the last order"), look -> Shown.text(look.told().answer)));
        leaves.add(new Node.Leaf(
                Property.of(
                                "refused",
                                "Orders not understood or not allowed since the service started",
                                Datatype.INTEGER)
                        .as("0:"),
                look -> Shown.whole(look.told().refused)));
        return new Node("orders", "Orders", "orders", leaves);
    }
}
