package rimeward.fitting;

/** Time that passes while a person waits. */
public interface Clock {
    /** Monotonic, s. */
    double nowS();

    void waitS(double seconds);
}
