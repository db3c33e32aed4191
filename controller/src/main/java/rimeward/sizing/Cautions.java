package rimeward.sizing;

import java.util.List;

/** What whoever buys a heater is told, wherever a sheet is shown. */
public final class Cautions {
    public static final List<String> HEATER = List.of(
            "Mains electricity in a damp place can kill. Circuit, RCD (30 mA), breaker, cable and sockets are work for a licensed"
                    + " electrician, to the code that holds where you are.",
            "A heater draws its current for hours: no extension lead, no adaptor; feel whether plugs get hot.",
            "Heaters start fires. Each keeps its own thermostat and over-temperature cut-out, is made for damp air, and stands clear of"
                    + " film, fleece and leaves.",
            "The sheet is arithmetic with stated guesses, no design by an engineer, and nothing here is safety-certified. Keep an"
                    + " independent frost alarm.");

    private Cautions() {}
}
