package rimeward.json;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/** JSON that was read (RFC 8259). */
public sealed interface Json {
    record Members(Map<String, Json> each) implements Json {}

    record Elements(List<Json> each) implements Json {}

    record Text(String text) implements Json {}

    /** A finite number. */
    record Figure(double value) implements Json {}

    /** true, false or null. */
    record Word(String word) implements Json {}

    /** The member of this name; empty where there is none, or this has no members. */
    default Optional<Json> get(String name) {
        return this instanceof Members members
                ? Optional.ofNullable(members.each().get(name))
                : Optional.empty();
    }

    /** Names of the members in their order. */
    default List<String> names() {
        return this instanceof Members members ? List.copyOf(members.each().keySet()) : List.of();
    }
}
