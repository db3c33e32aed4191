package rimeward.fitting;

import java.util.Optional;

/** Whoever stands in the tunnel and turns, listens and types. */
public interface Person {
    void say(String text);

    /** Asks and waits for a line, without spaces around it; {@code q} where there is nobody to answer any more. */
    String ask(String question);

    /** A line that was typed unasked; empty where there is none yet. Does not wait. */
    Optional<String> typed();
}
