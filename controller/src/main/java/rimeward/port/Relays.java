package rimeward.port;

import rimeward.site.RelaySet;

/** Where commands go. */
public interface Relays {
    /** Closes these relays and opens all others. Returns at once; a relay that fails shows in what is sensed. */
    void close(RelaySet set);
}
