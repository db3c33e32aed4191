package rimeward.adapter.pi;

import java.io.IOException;

/** An I2C bus on which one can ask. */
interface I2cBus extends AutoCloseable {
    /**
     * Writes a command, waits while the chip measures, reads the answer.
     *
     * @throws IOException if nobody acknowledges, or the bus is absent or closed to us
     */
    byte[] ask(int address, byte[] command, int waitMs, int answerLength) throws IOException;

    /** Lets go of it; a later question opens it again. */
    @Override
    default void close() {}
}
