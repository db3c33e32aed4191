package rimeward.core.judgement;

/** What the judge makes of one reading. */
public enum Verdict {
    TRUSTED(""),
    NOT_FITTED("is not fitted"),
    LOST("gives no reading"),
    TOO_OLD("has not reported for too long"),
    OUT_OF_RANGE("reads what no tunnel can be"),
    TOO_FAST("jumped faster than air can change"),
    FROZEN("has not moved at all while the air did"),
    DISAGREES("disagrees with its neighbours");

    private final String says;

    Verdict(String says) {
        this.says = says;
    }

    public boolean isTrusted() {
        return this == TRUSTED;
    }

    /** Goes after the sensor's name: "Cold corner has not reported for too long". */
    public String says() {
        return says;
    }
}
