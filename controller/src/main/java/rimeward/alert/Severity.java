package rimeward.alert;

/** How bad: {@code severity} of the Common Alerting Protocol 1.2 (OASIS, 2010), with its words, the worst first. */
public enum Severity {
    EXTREME("Extreme"),
    SEVERE("Severe"),
    MODERATE("Moderate"),
    MINOR("Minor"),
    UNKNOWN("Unknown");

    private final String word;

    Severity(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
