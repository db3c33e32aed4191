package rimeward.adapter.pi;

import rimeward.core.reading.Reading;

/** What is known of a machine's power. */
@FunctionalInterface
interface PowerSense {
    /** The power, W, with its age, or why it is not known. Never waits. */
    Reading latch(long nowNs);
}
