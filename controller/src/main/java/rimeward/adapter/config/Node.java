package rimeward.adapter.config;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What a TOML file says, each part with the place it was written, so that files can be laid over each other and still be blamed. */
sealed interface Node {

    Origin origin();

    /** A table; keys in the order of the file. */
    record Branch(Origin origin, Map<String, Node> children) implements Node {
        public Branch {
            children = Collections.unmodifiableMap(new LinkedHashMap<>(children));
        }

        /** Tables are laid over each other key by key; anything else of {@code above} replaces what was there. */
        Branch under(Branch above) {
            Map<String, Node> merged = new LinkedHashMap<>(children);
            above.children.forEach((key, upper) -> merged.merge(key, upper, Branch::lay));
            return new Branch(origin, merged);
        }

        private static Node lay(Node lower, Node upper) {
            return lower instanceof Branch below && upper instanceof Branch above ? below.under(above) : upper;
        }
    }

    /** An array, of tables or of values. */
    record Row(Origin origin, List<Node> items) implements Node {
        public Row {
            items = List.copyOf(items);
        }
    }

    /** A single value as the parser gives it: String, Long, Double, Boolean or one of java.time. */
    record Leaf(Origin origin, Object value) implements Node {}
}
