package rimeward.app;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;

/** Numbers as a person writes them. */
final class Plain {
    private static final int DECIMALS = 2;

    private Plain() {}

    /** At most two decimals, none that say nothing. */
    static String number(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value)
                .setScale(DECIMALS, RoundingMode.HALF_EVEN)
                .stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString().replace('-', '−');
    }

    /** A minute of the day as HH:MM. */
    static String clock(int minuteOfDay) {
        return String.format(Locale.ROOT, "%02d:%02d", minuteOfDay / 60, minuteOfDay % 60);
    }
}
