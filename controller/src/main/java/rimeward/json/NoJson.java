package rimeward.json;

/** A text is no JSON, or more of it than anybody needs; {@link #why} tells the sender in words. */
public final class NoJson extends Exception {
    private static final long serialVersionUID = 1L;

    private final String why;

    NoJson(String why) {
        super(why, null, false, false); // a flood of them must cost little
        this.why = why;
    }

    public String why() {
        return why;
    }
}
