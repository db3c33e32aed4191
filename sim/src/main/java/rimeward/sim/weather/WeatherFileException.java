package rimeward.sim.weather;

import java.util.List;

/**
 * A weather file that cannot be used. Every fault that was found is one complete sentence: file, line, column, value, limit,
 * remedy.
 */
public final class WeatherFileException extends Exception {
    private static final long serialVersionUID = 1;

    private final List<String> faults;

    WeatherFileException(List<String> faults) {
        super(String.join("\n", faults));
        this.faults = List.copyOf(faults);
    }

    public List<String> faults() {
        return faults;
    }
}
