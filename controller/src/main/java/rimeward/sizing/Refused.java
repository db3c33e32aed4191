package rimeward.sizing;

import java.util.List;

/** What cannot be worked with: every fault a sentence that says what, where, the limit and what to do. For people; no stack trace. */
public final class Refused extends Exception {
    private static final long serialVersionUID = 1;

    private final transient List<String> faults;

    public Refused(List<String> faults) {
        super(String.join("\n", faults));
        this.faults = List.copyOf(faults);
    }

    /** At least one. */
    public List<String> faults() {
        return faults;
    }
}
