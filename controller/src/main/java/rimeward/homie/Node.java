package rimeward.homie;

import java.util.List;
import java.util.function.Function;

/**
 * A part of the tunnel.
 *
 * @param id letters a to z, digits and {@code -} only
 */
record Node(String id, String name, String type, List<Leaf> leaves) {
    Node {
        leaves = List.copyOf(leaves);
    }

    /** A property, and where its value comes from. */
    record Leaf(Property property, Function<Look, Shown> source) {}
}
