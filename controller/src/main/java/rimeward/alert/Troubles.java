package rimeward.alert;

/** What is wrong with the controller itself at one tick: a door that fails, a clock that jumped, a tick that came late. */
public interface Troubles {
    /** None at all: in a replay the doors are sound. */
    Troubles NONE = (kind, subject) -> false;

    /** Whether this is wrong now. */
    boolean has(AlertKind kind, String subject);
}
