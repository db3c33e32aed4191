package rimeward.adapter.pi;

/** Lines cannot be had. The message is for people: what, where, and what to do. */
public final class LinesRefused extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final String why;

    LinesRefused(String why) {
        super(why);
        this.why = why;
    }

    LinesRefused(String why, Throwable cause) {
        super(why, cause);
        this.why = why;
    }

    /** The message. */
    public String why() {
        return why;
    }
}
