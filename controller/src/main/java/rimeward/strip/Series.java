package rimeward.strip;

/** Values in order of time. */
public interface Series {
    int rows();

    /** Time of a row, s since 1970 UTC; never before the row above it. */
    long epochS(int row);

    /** The value; means something only where {@link #isKnown}. */
    double value(int row);

    default boolean isKnown(int row) {
        return true;
    }
}
