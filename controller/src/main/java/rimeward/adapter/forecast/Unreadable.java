package rimeward.adapter.forecast;

/** A text is no forecast that could be used; {@link #why} says where and why, as the end of "…: it is no forecast". */
final class Unreadable extends Exception {
    private static final long serialVersionUID = 1L;

    private final String why;

    Unreadable(String why) {
        super(why, null, false, false);
        this.why = why;
    }

    String why() {
        return why;
    }
}
