package rimeward.site;

/** How a relay is reached. A relay on a line always states what it does at start and at stop: nothing is assumed. */
public sealed interface Wiring {
    /** No line: simulated, or not connected yet. */
    record NotWired() implements Wiring {}

    /**
     * A GPIO line.
     *
     * @param chip label of the GPIO chip
     * @param line offset on the chip
     * @param activeLow whether the relay closes when the line is low
     * @param closedAtStart whether the relay is closed when the service takes the line
     * @param closedAtStop whether the relay is closed when the service lets go of it
     */
    record GpioLine(String chip, int line, boolean activeLow, boolean closedAtStart, boolean closedAtStop)
            implements Wiring {
        public GpioLine {
            Check.that(!chip.isBlank(), "a GPIO line needs the label of its chip");
            Check.within("GPIO line", line, 0, 511);
        }
    }
}
