package rimeward.sim.report;

import java.math.BigDecimal;
import java.math.MathContext;

/** Numbers in files: the same digits on any JDK. */
final class Fixed {
    private static final long[] POWERS = {1, 10, 100, 1000, 10_000, 100_000, 1_000_000};

    /** Beyond this a double no longer holds every digit that would be shown. */
    private static final double MOST = 1e12;

    private Fixed() {}

    /** With so many decimals (0…6), rounded to the nearest; never "-0". */
    static void append(StringBuilder out, double value, int decimals) {
        if (!(Math.abs(value) < MOST)) {
            throw new IllegalArgumentException(value + " is no number for a file; it must lie within ±1e12");
        }
        long power = POWERS[decimals];
        long scaled = (long) StrictMath.rint(value * power);
        if (scaled < 0) {
            out.append('-');
            scaled = -scaled;
        }
        out.append(scaled / power);
        if (decimals > 0) {
            out.append('.');
            String digits = Long.toString(scaled % power);
            out.append("0".repeat(decimals - digits.length())).append(digits);
        }
    }

    static String of(double value, int decimals) {
        StringBuilder out = new StringBuilder();
        append(out, value, decimals);
        return out.toString();
    }

    /** With two significant digits, for shares that may be tiny: 4.4E-14. */
    static String tiny(double value) {
        return new BigDecimal(value).round(new MathContext(2)).toString();
    }
}
