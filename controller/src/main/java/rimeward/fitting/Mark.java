package rimeward.fitting;

import java.util.List;

/**
 * A mark of a dial and where its thermostat was seen to switch.
 *
 * @param name as the person typed it
 * @param onC bench temperatures at which it came on, °C
 * @param offC the same for off, °C
 * @param how what was looked at, in words
 * @param ending why no more was seen; empty when all swings were
 */
public record Mark(String name, List<Double> onC, List<Double> offC, String how, String ending) {
    public Mark {
        onC = List.copyOf(onC);
        offC = List.copyOf(offC);
    }

    /** Swings seen whole: on and off. */
    public int swings() {
        return StrictMath.min(onC.size(), offC.size());
    }
}
