package rimeward.core.decision;

/** What a law remembers from one tick to the next: an immutable value of its own making. */
public interface LawState {
    /** For a law that remembers nothing. */
    record Nothing() implements LawState {}

    LawState NOTHING = new Nothing();
}
