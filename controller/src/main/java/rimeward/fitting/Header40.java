package rimeward.fitting;

import java.util.Map;

/**
 * The Raspberry Pi's header of 40 pins: where the lines of its chip come out, the same on every board with that header (Raspberry Pi
 * documentation, "GPIO and the 40-pin header"; the numbers from memory, their consistency tested).
 */
public final class Header40 {
    private static final Map<Integer, Integer> PINS = Map.ofEntries(
            Map.entry(0, 27),
            Map.entry(1, 28),
            Map.entry(2, 3),
            Map.entry(3, 5),
            Map.entry(4, 7),
            Map.entry(5, 29),
            Map.entry(6, 31),
            Map.entry(7, 26),
            Map.entry(8, 24),
            Map.entry(9, 21),
            Map.entry(10, 19),
            Map.entry(11, 23),
            Map.entry(12, 32),
            Map.entry(13, 33),
            Map.entry(14, 8),
            Map.entry(15, 10),
            Map.entry(16, 36),
            Map.entry(17, 11),
            Map.entry(18, 12),
            Map.entry(19, 35),
            Map.entry(20, 38),
            Map.entry(21, 40),
            Map.entry(22, 15),
            Map.entry(23, 16),
            Map.entry(24, 18),
            Map.entry(25, 22),
            Map.entry(26, 37),
            Map.entry(27, 13));

    /** Lines that are pulled up until a program takes them; the others are pulled down (BCM2835 ARM Peripherals, table 6-31). */
    private static final int LAST_PULLED_UP = 8;

    private Header40() {}

    /** The pin of a line as people read it. */
    public static String pin(int line) {
        Integer pin = PINS.get(line);
        return pin == null ? "not on the 40-pin header" : "pin " + pin + " of the 40-pin header";
    }

    /** Whether the Pi itself pulls the line high while no program holds it. */
    public static boolean isPulledUp(int line) {
        return line <= LAST_PULLED_UP;
    }
}
