package rimeward.port;

import rimeward.core.Outcome;

/** Where outcomes go for the record. */
public interface Journal {
    /** Takes one tick. Never blocks and never throws. */
    void record(Outcome outcome);
}
