package rimeward.core.judgement;

/** What the judge makes of one reading. */
public enum Verdict {
    TRUSTED(true, "is sound"),
    /** One of several that contradict each other without a majority: the coldest counts for the floor, the warmest for the hot limit. */
    AT_ODDS(true, "and others contradict each other, and nobody can tell which is right"),
    NOT_FITTED(false, "is not fitted"),
    LOST(false, "gives no reading"),
    TOO_OLD(false, "has not reported for too long"),
    OUT_OF_RANGE(false, "reads what no tunnel can be"),
    TOO_FAST(false, "jumped faster than air can change"),
    FROZEN(false, "has shown the very same number for too long"),
    DISAGREES(false, "disagrees with its neighbours");

    private final boolean trusted;
    private final String says;

    Verdict(boolean trusted, String says) {
        this.trusted = trusted;
        this.says = says;
    }

    public boolean isTrusted() {
        return trusted;
    }

    /** Whether a person should look at it: a reading was due, and it is not simply sound. */
    public boolean isDoubted() {
        return this != TRUSTED && this != NOT_FITTED;
    }

    /** Goes after the sensor's name: "cold-corner has not reported for too long". */
    public String says() {
        return says;
    }
}
