package rimeward.app;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import rimeward.sizing.Basis;
import rimeward.sizing.Input;
import rimeward.sizing.Sourced;
import rimeward.sizing.Stages;

/** Words and numbers of the heat-loss sheet. */
final class SizeWords {
    private static final MathContext THREE = new MathContext(3, RoundingMode.HALF_EVEN);

    static final List<String> CAUTIONS = List.of(
            "Mains electricity in a damp place can kill. Circuit, RCD (30 mA), breaker, cable and sockets are work for a licensed"
                    + " electrician, to the code that holds where you are.",
            "A heater draws its current for hours: no extension lead, no adaptor; feel whether plugs get hot.",
            "Heaters start fires. Each keeps its own thermostat and over-temperature cut-out, is made for damp air, and stands clear of"
                    + " film, fleece and leaves.",
            "The sheet is arithmetic with stated guesses, no design by an engineer, and nothing here is safety-certified. Keep an"
                    + " independent frost alarm.");

    private SizeWords() {}

    /** Three significant digits. */
    static String three(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).round(THREE).stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString().replace('-', '−');
    }

    /** A temperature that was worked out, to a tenth, °C. */
    static String tenth(double valueC) {
        return Plain.number(StrictMath.rint(10 * valueC) / 10);
    }

    static String money(double value) {
        return String.format(Locale.ROOT, "%.2f", value).replace('-', '−');
    }

    /** As exact as it is known. */
    static String exact(Sourced number) {
        boolean rounded = number.basis() == Basis.TABLE || number.basis() == Basis.DERIVED;
        BigDecimal value = BigDecimal.valueOf(number.value());
        return rounded || value.scale() > 6
                ? three(number.value())
                : value.signum() == 0
                        ? "0"
                        : value.stripTrailingZeros().toPlainString().replace('-', '−');
    }

    static String unit(Input input, String currency) {
        return input.unit().replace("money", currency);
    }

    /** As {@code 2 × 1500 W} or {@code 2000 + 1500 W}. */
    static String inWords(Stages stages) {
        if (!(stages instanceof Stages.Some some)) {
            return "none";
        }
        List<String> eachW = some.eachW().stream().map(Plain::number).toList();
        boolean alike = eachW.stream().distinct().count() == 1;
        return alike ? eachW.size() + " × " + eachW.get(0) + " W" : String.join(" + ", eachW) + " W";
    }
}
