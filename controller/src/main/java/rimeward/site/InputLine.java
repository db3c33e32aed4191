package rimeward.site;

/**
 * A GPIO line that is read: a contact's, or a meter's pulse output.
 *
 * @param chip label of the GPIO chip
 * @param line offset on the chip
 * @param activeLow whether the line is low while what it stands for is so
 * @param pull what holds it while nothing else does
 */
public record InputLine(String chip, int line, boolean activeLow, Pull pull) {
    public InputLine {
        Check.that(!chip.isBlank(), "a GPIO line needs the label of its chip");
        Check.within("GPIO line", line, 0, 511);
    }

    /** Where it is, as people say it. */
    public String inWords() {
        String pulled = pull == Pull.NONE ? "not pulled" : "pulled " + (pull == Pull.UP ? "up" : "down");
        return chip + " line " + line + (activeLow ? ", active low, " : ", active high, ") + pulled;
    }

    /** The resistor inside the chip. */
    public enum Pull {
        UP,
        DOWN,
        /** None: one outside does it, or the source drives the line both ways. */
        NONE
    }
}
