package rimeward.homie;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import rimeward.core.guard.Holder;
import rimeward.core.judgement.Damp;
import rimeward.core.judgement.Inside;
import rimeward.core.judgement.Outside;
import rimeward.core.judgement.Trust;
import rimeward.homie.Node.Leaf;
import rimeward.json.Decimal;
import rimeward.site.Contact;
import rimeward.site.Degrees;
import rimeward.site.Drying;
import rimeward.site.Machine;
import rimeward.site.Messaging.Command;
import rimeward.site.Sensor;
import rimeward.site.Site;

/** The tunnel's nodes in the order in which people ask: the air, the benches, who holds the floor, the machines, the night, the rest. */
final class Tree {
    private static final double RH_STEP_PERCENT = 1; // a fair sensor's noise stays below. Own choice, as the others

    private Tree() {}

    static List<Node> of(Site site, Degrees degrees, Set<Command> allowed) {
        List<Node> nodes = new ArrayList<>();
        nodes.add(air(degrees));
        for (int i = 0; i < site.sensors().size(); i++) {
            nodes.add(SensorNode.of(site.sensors().get(i), i, degrees));
        }
        nodes.add(duty(site, degrees, allowed.contains(Command.SET_FLOOR)));
        for (int i = 0; i < site.machines().size(); i++) {
            nodes.add(MachineNode.of(site.machines().get(i), i, degrees, allowed.contains(Command.STAND_DOWN)));
        }
        contact(site.drying() instanceof Drying.Dryer dryer ? dryer.tankFloat() : new Contact.NotFitted())
                .ifFitted(nodes, "tank", "Dryer's tank", "full", "not full,full", true);
        contact(site.door()).ifFitted(nodes, "door", "Door", "open", "shut,open", false);
        nodes.add(NightNode.of(site, degrees, allowed));
        nodes.add(alerts());
        nodes.add(service());
        if (!allowed.isEmpty()) {
            nodes.add(OrdersNode.of(allowed));
        }
        return List.copyOf(nodes);
    }

    private static Node air(Degrees degrees) {
        return new Node(
                "air",
                "Air inside and outside",
                "air",
                List.of(
                        new Leaf(
                                Property.number(
                                        "coldest", "Coldest bench, its sensor's uncertainty taken off", degrees.unit()),
                                look -> look.outcome().judgement().inside() instanceof Inside.Seen seen
                                        ? Shown.temperature(degrees, seen.coldestC())
                                        : Shown.NOTHING),
                        new Leaf(
                                Property.number("middle", "Mean of the benches", degrees.unit()),
                                look -> look.outcome().judgement().inside() instanceof Inside.Seen seen
                                        ? Shown.temperature(degrees, seen.middleC())
                                        : Shown.NOTHING),
                        new Leaf(
                                Property.number("outside", "Outside", degrees.unit()),
                                look -> look.outcome().judgement().outside() instanceof Outside.Seen seen
                                        ? Shown.temperature(degrees, seen.airC())
                                        : Shown.NOTHING),
                        new Leaf(
                                Property.number("humidity", "Relative humidity where it is wettest", "%"),
                                look -> look.outcome().judgement().damp() instanceof Damp.Seen seen
                                        ? percent(seen.wettestRhPercent())
                                        : Shown.NOTHING),
                        new Leaf(
                                Property.number("dew-point", "Highest dew point inside", degrees.unit()),
                                look -> look.outcome().judgement().damp() instanceof Damp.Seen seen
                                        ? Shown.temperature(degrees, seen.dewPointC())
                                        : Shown.NOTHING),
                        new Leaf(
                                Property.oneOf("trust", "How far the sensors are believed", Trust.values()),
                                look -> Shown.word(look.outcome().judgement().trust()))));
    }

    private static Node duty(Site site, Degrees degrees, boolean settable) {
        String limits =
                Decimal.of(degrees.of(site.lowestFloorC()), 1) + ":" + Decimal.of(degrees.of(site.highestFloorC()), 1);
        return new Node(
                "duty",
                "Keeping the floor",
                "duty",
                List.of(
                        new Leaf(
                                Property.oneOf("holder", "Who keeps the floor", Holder.values()),
                                look -> Shown.word(look.outcome().guarded().holder())),
                        new Leaf(Property.text("why", "Why"), look -> DutyWhy.of(site, look.outcome())),
                        new Leaf(
                                Property.number("floor", "The lowest temperature the plants may meet", degrees.unit())
                                        .as(limits)
                                        .settable(settable),
                                look -> Shown.number(degrees.of(look.outcome().floorC()), 0.05, 1))));
    }

    private static Node alerts() {
        return new Node(
                "alerts",
                "Alerts",
                "alerts",
                List.of(
                        new Leaf(
                                Property.of("standing", "How many stand", Datatype.INTEGER)
                                        .as("0:"),
                                look -> Shown.whole(look.told().standing)),
                        new Leaf(
                                Property.text("newest", "What was told last"),
                                look -> Shown.text(look.told().newestAlert))));
    }

    private static Node service() {
        return new Node(
                "service",
                "Rimeward itself",
                "service",
                List.of(
                        new Leaf(Property.text("version", "Version"), look -> Shown.text(look.told().version)),
                        new Leaf(
                                Property.yesNo("law-failed", "Whether the control law fails", "works,fails"),
                                look -> Shown.yesNo(look.outcome().lawFailed()))));
    }

    static Shown percent(double rhPercent) {
        return Shown.number(rhPercent, RH_STEP_PERCENT, 0);
    }

    private static ContactNode contact(Contact contact) {
        return new ContactNode(contact);
    }

    /** What is known of a sensor's place: the bench's name, or outside. */
    static boolean isInside(Sensor sensor) {
        return sensor.place().isInside();
    }

    static String nodeOf(Machine machine) {
        return "machine-" + machine.id();
    }
}
