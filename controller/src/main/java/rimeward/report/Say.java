package rimeward.report;

import java.util.Locale;

/** Numbers as a person reads them. */
public final class Say {
    private static final int MINUTE_S = 60;
    private static final int HOUR_S = 3600;
    private static final int DAY_S = 24 * HOUR_S;

    private Say() {}

    public static String number(double value, int decimals) {
        String text = String.format(Locale.ROOT, "%." + decimals + "f", Math.abs(value));
        boolean isZero = text.chars().allMatch(c -> c == '0' || c == '.');
        return value < 0 && !isZero ? "\u2212" + text : text;
    }

    /** A number and its unit, kept on one line. */
    public static String with(double value, int decimals, String unit) {
        return number(value, decimals) + "\u00A0" + unit;
    }

    public static String degrees(double tempC) {
        return number(tempC, 1) + "\u00A0°C";
    }

    /** "45 s", "12 min", "2 h 10 min", "3 days 4 h". */
    public static String duration(long lengthS) {
        if (lengthS < 2 * MINUTE_S) {
            return lengthS + "\u00A0s";
        }
        if (lengthS < HOUR_S) {
            return lengthS / MINUTE_S + "\u00A0min";
        }
        if (lengthS < 2 * DAY_S) {
            return both(lengthS / HOUR_S + "\u00A0h", lengthS % HOUR_S / MINUTE_S, "\u00A0min");
        }
        return both(lengthS / DAY_S + "\u00A0days", lengthS % DAY_S / HOUR_S, "\u00A0h");
    }

    private static String both(String larger, long rest, String unit) {
        return rest == 0 ? larger : larger + " " + rest + unit;
    }

    public static String count(long number, String one, String many) {
        return number + " " + (number == 1 ? one : many);
    }
}
