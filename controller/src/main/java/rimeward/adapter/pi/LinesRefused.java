package rimeward.adapter.pi;

/** The relays' lines cannot be had. The message is for people: what, where, and what to do. */
public final class LinesRefused extends RuntimeException {
    private static final long serialVersionUID = 1;

    LinesRefused(String message) {
        super(message);
    }

    LinesRefused(String message, Throwable cause) {
        super(message, cause);
    }
}
