package rimeward.alert;

/** How soon to act: {@code urgency} of the Common Alerting Protocol 1.2 (OASIS, 2010), with its words. */
public enum Urgency {
    IMMEDIATE("Immediate"),
    EXPECTED("Expected"),
    FUTURE("Future"),
    PAST("Past"),
    UNKNOWN("Unknown");

    private final String word;

    Urgency(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
