package rimeward.adapter.config;

import java.util.List;
import java.util.stream.Collectors;

/** Settings that were refused: every fault found, one a line in the message. For people; the program shows it without a stack trace. */
public final class BadSettings extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final transient List<Fault> faults;

    BadSettings(List<Fault> faults) {
        super(faults.stream().map(Fault::toString).collect(Collectors.joining("\n")));
        this.faults = List.copyOf(faults);
    }

    /** At least one, by file and line. */
    public List<Fault> faults() {
        return faults;
    }
}
