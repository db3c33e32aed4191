package rimeward.homie;

import java.util.List;
import rimeward.core.reading.Signal;
import rimeward.site.Contact;

/** A contact that the controller sees. */
record ContactNode(Contact contact) {
    /** Adds it where there is one. */
    void ifFitted(List<Node> nodes, String id, String name, String property, String labels, boolean tank) {
        if (contact.isFitted()) {
            nodes.add(new Node(
                    id,
                    name,
                    "contact",
                    List.of(new Node.Leaf(
                            Property.yesNo(property, name, labels),
                            look -> shown(
                                    tank
                                            ? look.outcome().frame().senses().tankFull()
                                            : look.outcome().frame().senses().doorOpen())))));
        }
    }

    private static Shown shown(Signal signal) {
        return switch (signal) {
            case ON -> Shown.yesNo(true);
            case OFF -> Shown.yesNo(false);
            case LOST, NOT_FITTED -> Shown.NOTHING;
        };
    }
}
