package rimeward.adapter.forecast;

/** The service gave no answer; {@link #why} is a sentence for people, beginning with "It". */
final class NoReply extends Exception {
    private static final long serialVersionUID = 1L;

    private final String why;

    NoReply(String why) {
        super(why, null, false, false);
        this.why = why;
    }

    String why() {
        return why;
    }
}
