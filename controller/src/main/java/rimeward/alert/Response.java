package rimeward.alert;

/** What to do: those of {@code responseType} of the Common Alerting Protocol 1.2 (OASIS, 2010) that a tunnel needs, with its words. */
public enum Response {
    PREPARE("Prepare"),
    EXECUTE("Execute"),
    MONITOR("Monitor"),
    ASSESS("Assess"),
    ALL_CLEAR("AllClear"),
    NONE("None");

    private final String word;

    Response(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
