package rimeward.port;

import rimeward.site.RelaySet;

/** Where commands go. */
public interface Relays {
    /** Closes these relays and opens all others. Returns at once and never throws. */
    void close(RelaySet set);

    /** Whether some relay is known not to do as told; one that fails unseen shows in what is sensed. */
    default boolean isFailing() {
        return false;
    }
}
