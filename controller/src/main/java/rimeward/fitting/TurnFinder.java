package rimeward.fitting;

import java.util.Optional;
import rimeward.core.reading.Reading;

/** Sees a heater's own thermostat switch. The state it is first met in is no switching. */
interface TurnFinder {
    /**
     * One more look.
     *
     * @param powerW what the heater draws
     * @return the switching that has just become certain, if any
     */
    Optional<Turn> look(double atS, double benchC, Reading powerW);

    /** What is looked at, in words, for the table. */
    String inWords();
}
