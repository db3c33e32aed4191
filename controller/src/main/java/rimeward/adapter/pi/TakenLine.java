package rimeward.adapter.pi;

import java.util.OptionalLong;

/** One line that is read. For one thread. */
interface TakenLine extends AutoCloseable {
    /**
     * Its level now.
     *
     * @throws RelayLine.LineFailed if it cannot be read
     */
    boolean isHigh();

    /**
     * When it next became active, on the machine's monotonic clock, ns; waits at most this long. None is lost while nobody waits, up to
     * the sixteen that the kernel keeps.
     *
     * @throws RelayLine.LineFailed if it cannot be read
     */
    OptionalLong nextEdgeNs(long waitMs);

    @Override
    void close();
}
