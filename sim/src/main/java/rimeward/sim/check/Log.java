package rimeward.sim.check;

import java.util.Optional;
import java.util.function.Supplier;

/** What was found against one property: the first time in words, all times in seconds. For one thread. */
final class Log {
    private final Property property;
    private long firstEpochS;
    private long lastedS;
    private String text = "";

    Log(Property property) {
        this.property = property;
    }

    /** The words are only asked for the first time. */
    void found(Facts now, Supplier<String> words) {
        if (text.isEmpty()) {
            firstEpochS = now.epochS;
            text = words.get();
        }
        lastedS += now.lastsS;
    }

    Optional<Breach> breach() {
        return text.isEmpty() ? Optional.empty() : Optional.of(new Breach(property, firstEpochS, lastedS, text));
    }
}
