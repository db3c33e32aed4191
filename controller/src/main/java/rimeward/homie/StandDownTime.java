package rimeward.homie;

import rimeward.core.Outcome;

/** How long a machine stands down yet. */
final class StandDownTime {
    private StandDownTime() {}

    /** Whole minutes, rounded up; 0 where it is in use. */
    static long leftMin(Outcome outcome, int machine) {
        return 0;
    }
}
