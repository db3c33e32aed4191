package rimeward.site;

/** A contact that the controller may see: the tank's float, the door's switch. */
public sealed interface Contact {
    record NotFitted() implements Contact {}

    /** There is one, and nothing of it reaches this program but simulated or replayed. */
    record NotAttached() implements Contact {}

    /** On a line that is active while the tank is full, or the door open. */
    record OnLine(InputLine at) implements Contact {}

    /** Where it hangs, as people say it. */
    default String inWords() {
        return this instanceof OnLine on ? on.at.inWords() : isFitted() ? "not attached" : "none";
    }

    default boolean isFitted() {
        return !(this instanceof NotFitted);
    }
}
