package rimeward.core.judgement;

import rimeward.core.reading.Reading;

/** The first look at a reading, by itself and at one moment. */
final class Plausible {
    private Plausible() {}

    /** The limits are in the reading's own unit; NaN lies within none. */
    static Verdict of(Reading reading, double least, double most, double maxAgeS) {
        if (reading instanceof Reading.Value value) {
            if (value.ageS() > maxAgeS) {
                return Verdict.TOO_OLD;
            }
            return value.value() >= least && value.value() <= most ? Verdict.TRUSTED : Verdict.OUT_OF_RANGE;
        }
        return reading instanceof Reading.NotFitted ? Verdict.NOT_FITTED : Verdict.LOST;
    }
}
