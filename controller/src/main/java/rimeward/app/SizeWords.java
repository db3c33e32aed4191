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
