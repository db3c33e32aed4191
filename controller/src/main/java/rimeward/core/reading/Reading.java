package rimeward.core.reading;

/** One number from one sensor, or the reason why there is none. The unit stands in the name of whoever holds it. */
public sealed interface Reading {
    /**
     * A number.
     *
     * @param ageS how long ago the sensor took it, s
     */
    record Value(double value, double ageS) implements Reading {}

    /** No number though one was due. */
    record Lost(Loss why) implements Reading {}

    /** No number because nothing is there to give one. */
    record NotFitted() implements Reading {}

    /** Shared instances, so that a tick allocates none. */
    Reading NOT_FITTED = new NotFitted();

    Reading NO_ANSWER = new Lost(Loss.NO_ANSWER);
}
