package rimeward.port;

import rimeward.core.reading.Senses;

/** Where readings come from. */
public interface Sensors {
    /** The latest of everything, with its age. Never blocks and never throws: what could not be read is a value that says so. */
    Senses latch();
}
