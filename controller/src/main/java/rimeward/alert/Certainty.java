package rimeward.alert;

/** How sure: {@code certainty} of the Common Alerting Protocol 1.2 (OASIS, 2010), with its words. */
public enum Certainty {
    OBSERVED("Observed"),
    LIKELY("Likely"),
    POSSIBLE("Possible"),
    UNLIKELY("Unlikely"),
    UNKNOWN("Unknown");

    private final String word;

    Certainty(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
