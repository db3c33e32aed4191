package rimeward.adapter.mqtt;

/** The line to the broker does not come up, or broke. The message says why, in words for the log. */
final class LineFailed extends Exception {
    private static final long serialVersionUID = 1;

    LineFailed(String why) {
        super(why);
    }

    LineFailed(String why, Throwable cause) {
        super(why, cause);
    }
}
