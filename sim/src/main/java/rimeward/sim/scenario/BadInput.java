package rimeward.sim.scenario;

/** Something asked for that cannot be had: told to a person as it is, without a stack trace. */
public final class BadInput extends Exception {
    private static final long serialVersionUID = 1;

    /** One or more complete sentences: what, where, the limit, and what to do. */
    public BadInput(String message) {
        super(message);
    }

    public BadInput(String message, Throwable cause) {
        super(message, cause);
    }
}
