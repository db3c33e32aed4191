package rimeward.core.judgement;

/** The air outside, as far as it is known. */
public sealed interface Outside {
    /** Temperature, °C, believed. */
    record Seen(double airC, OutsideDamp damp) implements Outside {}

    record Unseen() implements Outside {}

    Outside UNSEEN = new Unseen();
}
