package rimeward.site;

/** Where a sensor hangs. */
public sealed interface Place {
    /** On a named bench inside. */
    record Bench(String name) implements Place {
        public Bench {
            Check.that(!name.isBlank(), "a bench needs a name");
        }
    }

    /** In the outside air, shaded. */
    record Outside() implements Place {}

    default boolean isInside() {
        return this instanceof Bench;
    }
}
