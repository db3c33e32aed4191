package rimeward.adapter.pi;

/** One output that drives a relay. */
interface RelayLine {
    /**
     * Drives the line.
     *
     * @throws LineFailed if it would not be driven
     */
    void drive(boolean high);

    /**
     * What the line is seen to be.
     *
     * @throws LineFailed if it cannot be read back
     */
    boolean isHigh();

    /** A line that did not do as told. */
    final class LineFailed extends RuntimeException {
        private static final long serialVersionUID = 1;

        LineFailed(String message, Throwable cause) {
            super(message, cause);
        }
    }
}
